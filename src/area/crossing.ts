/** A corner of a boundary: x and y in one unit. */
export type Corner = readonly [x: number, y: number];

/** Two sides that meet where they should not, in the order of the list. Side `i` runs from corner `i` to the next one. */
export interface Crossing {
  readonly first: number;
  readonly second: number;
  /** A point where they meet. */
  readonly at: Corner;
}

/**
 * Where a closed boundary crosses or touches itself, or `undefined` where it does not. No two corners that follow each
 * other may be the same.
 *
 * A line sweeps over the corners from left to right and holds the sides that it cuts, in order from bottom to top, in a
 * balanced tree. Only sides that come to lie next to each other can be the first to meet (M. I. Shamos and D. Hoey, Geometric
 * intersection problems, 1976). So the time grows with n log n, for a comb of long thin teeth as well as for a round field. A
 * test of every pair of sides would take 50 million steps for 10,000 corners.
 */
export function findCrossing(corners: readonly Corner[]): Crossing | undefined {
  const n = corners.length;
  const corner = (i: number): Corner => corners[i % n] as Corner;
  const order = corners.map((_, i) => i).sort((i, j) => compareCorners(corner(i), corner(j)));

  // Corners are all different from here on, so that the sweep meets one corner at a time.
  for (let k = 1; k < n; k++) {
    const [i, j] = [order[k - 1] as number, order[k] as number];
    if (compareCorners(corner(i), corner(j)) === 0) return crossing(i, j, corner(i));
  }

  const meeting = (i: number, j: number): Crossing | undefined => {
    // Neighbours share a corner. Where one lies back on the other, its far end has been found on that one before.
    if ((i + 1) % n === j || (j + 1) % n === i) return undefined;
    const [a, b, c, d] = [corner(i), corner(i + 1), corner(j), corner(j + 1)];
    return sidesMeet(a, b, c, d) ? crossing(i, j, meetingPoint(a, b, c, d)) : undefined;
  };
  // Stryker disable EqualityOperator: the two ends of a side are never one place
  const leftEnd = (side: number): Corner =>
    compareCorners(corner(side), corner(side + 1)) < 0 ? corner(side) : corner(side + 1);
  const rightEnd = (side: number): Corner =>
    compareCorners(corner(side), corner(side + 1)) < 0 ? corner(side + 1) : corner(side);
  // Stryker restore EqualityOperator
  // Stryker disable next-line ObjectLiteral: the seed decides on the shape of the tree, and so on the time it takes
  const tree: SideTree = { root: undefined, seed: 1 };
  // Stryker disable next-line ArrayDeclaration: a list that is long from the start is the quicker one
  const nodes: SideNode[] = new Array(n);

  for (const k of order) {
    const here = corner(k);
    const before = (k + n - 1) % n;
    const ending = [before, k].filter((side) => rightEnd(side) === here);
    const starting = [before, k].filter((side) => leftEnd(side) === here);
    if (ending.length === 1) {
      // One side goes on where the other ends: it takes that one's place.
      const node = nodes[ending[0] as number] as SideNode;
      const side = starting[0] as number;
      node.side = side;
      nodes[side] = node;
      const found = firstMeeting(meeting, node);
      if (found !== undefined) return found;
    } else if (ending.length === 0) {
      const place = findPlace(tree, (side) => turn(leftEnd(side), rightEnd(side), here));
      if (place.on !== undefined) return crossing(place.on, k, here);
      const [p, q] = starting as [number, number];
      const bend = turn(here, rightEnd(p), rightEnd(q));
      if (bend === 0) return crossing(before, k, here);
      // Stryker disable next-line EqualityOperator: 0 has been answered
      const [low, high] = bend > 0 ? [p, q] : [q, p];
      const lower = insertAt(tree, place, low);
      const upper = insertAfter(tree, lower, high);
      nodes[lower.side] = lower;
      nodes[upper.side] = upper;
      const found = firstMeeting(meeting, lower) ?? firstMeeting(meeting, upper);
      if (found !== undefined) return found;
    } else {
      for (const side of ending) {
        const node = nodes[side] as SideNode;
        const [below, above] = [previous(node), next(node)];
        remove(tree, node);
        if (below === undefined || above === undefined) continue;
        const found = meeting(below.side, above.side);
        if (found !== undefined) return found;
      }
    }
  }
  return undefined;
}

function crossing(i: number, j: number, at: Corner): Crossing {
  return { first: Math.min(i, j), second: Math.max(i, j), at };
}

function firstMeeting(
  meeting: (i: number, j: number) => Crossing | undefined,
  node: SideNode,
): Crossing | undefined {
  const [below, above] = [previous(node), next(node)];
  return (
    (below === undefined ? undefined : meeting(below.side, node.side)) ??
    (above === undefined ? undefined : meeting(node.side, above.side))
  );
}

// From left to right, and from bottom to top on one upright line.
function compareCorners([ax, ay]: Corner, [bx, by]: Corner): number {
  return ax - bx || ay - by;
}

/**
 * Which way the way from a to b turns to get to c. More than 0 is left, less than 0 right, and 0 straight on or a turn too
 * slight to see in floating point (J. R. Shewchuk, Adaptive precision floating-point arithmetic and fast robust geometric
 * predicates, 1997, gives the bound).
 */
function turn([ax, ay]: Corner, [bx, by]: Corner, [cx, cy]: Corner): number {
  const left = (bx - ax) * (cy - ay);
  const right = (by - ay) * (cx - ax);
  const result = left - right;
  // Stryker disable next-line EqualityOperator: a bound is no number that a result meets
  return Math.abs(result) > 3.4e-16 * (Math.abs(left) + Math.abs(right)) ? result : 0;
}

function sidesMeet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  // Stryker disable next-line EqualityOperator,ArithmeticOperator: only the sign counts, and 0 is a touch, found below
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && inBox(a, b, c)) ||
    (abd === 0 && inBox(a, b, d)) ||
    (cda === 0 && inBox(c, d, a)) ||
    (cdb === 0 && inBox(c, d, b))
  );
}

function inBox(a: Corner, b: Corner, c: Corner): boolean {
  return (
    Math.min(a[0], b[0]) <= c[0] &&
    c[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= c[1] &&
    c[1] <= Math.max(a[1], b[1])
  );
}

function meetingPoint(a: Corner, b: Corner, c: Corner, d: Corner): Corner {
  const [across, along] = [turn(c, d, a), turn(c, d, b)];
  // Sides that floating point cannot distinguish from one line: the sweep met them where the second starts.
  if (across === along) return c;
  const part = across / (across - along);
  return [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
}

interface SideNode {
  side: number;
  readonly priority: number;
  parent: SideNode | undefined;
  below: SideNode | undefined;
  above: SideNode | undefined;
}

/** Where a side belongs in the tree: under `parent`, or `on` a side that its start lies on. */
interface Place {
  readonly parent: SideNode | undefined;
  readonly above: boolean;
  readonly on?: number | undefined;
}

/**
 * The sides that the sweep cuts, from bottom to top. The search tree is kept flat by giving each node a random priority and
 * each parent a higher one than its children (C. R. Aragon and R. G. Seidel, Randomized search trees, 1989).
 */
interface SideTree {
  root: SideNode | undefined;
  seed: number;
}

function findPlace(tree: SideTree, compare: (side: number) => number): Place {
  // Stryker disable next-line BooleanLiteral,ObjectLiteral: there is no side of a root
  let place: Place = { parent: undefined, above: false };
  let node = tree.root;
  while (node !== undefined) {
    const way = compare(node.side);
    if (way === 0) return { ...place, on: node.side };
    // Stryker disable next-line EqualityOperator: 0 has been answered
    const above = way > 0;
    place = { parent: node, above };
    node = above ? node.above : node.below;
  }
  return place;
}

function insertAt(tree: SideTree, { parent, above }: Place, side: number): SideNode {
  // A fixed sequence (the constants are those of Numerical Recipes), so that a boundary always takes the same steps.
  // Stryker disable next-line ArithmeticOperator: priorities decide on the shape of the tree, and so on the time it takes
  tree.seed = (Math.imul(tree.seed, 1664525) + 1013904223) >>> 0;
  const node: SideNode = { side, priority: tree.seed, parent, below: undefined, above: undefined };
  if (parent === undefined) tree.root = node;
  else if (above) parent.above = node;
  else parent.below = node;
  // Stryker disable next-line ConditionalExpression,EqualityOperator: as above
  while (node.parent !== undefined && node.parent.priority < node.priority) lift(tree, node);
  return node;
}

function insertAfter(tree: SideTree, node: SideNode, side: number): SideNode {
  if (node.above === undefined) return insertAt(tree, { parent: node, above: true }, side);
  let parent = node.above;
  while (parent.below !== undefined) parent = parent.below;
  return insertAt(tree, { parent, above: false }, side);
}

function remove(tree: SideTree, node: SideNode): void {
  while (node.below !== undefined && node.above !== undefined) {
    // Stryker disable next-line ConditionalExpression,EqualityOperator: as above
    lift(tree, node.below.priority > node.above.priority ? node.below : node.above);
  }
  replace(tree, node, node.below ?? node.above);
}

function replace(tree: SideTree, node: SideNode, by: SideNode | undefined): void {
  const { parent } = node;
  if (parent === undefined) tree.root = by;
  else if (parent.below === node) parent.below = by;
  else parent.above = by;
  if (by !== undefined) by.parent = parent;
}

// Turns a node and its parent round; the order from bottom to top stays.
function lift(tree: SideTree, node: SideNode): void {
  const parent = node.parent as SideNode;
  replace(tree, parent, node);
  if (parent.below === node) {
    parent.below = node.above;
    if (node.above !== undefined) node.above.parent = parent;
    node.above = parent;
  } else {
    parent.above = node.below;
    if (node.below !== undefined) node.below.parent = parent;
    node.below = parent;
  }
  parent.parent = node;
}

function previous(node: SideNode): SideNode | undefined {
  if (node.below !== undefined) {
    let found = node.below;
    while (found.above !== undefined) found = found.above;
    return found;
  }
  let child = node;
  while (child.parent !== undefined && child.parent.below === child) child = child.parent;
  return child.parent;
}

function next(node: SideNode): SideNode | undefined {
  if (node.above !== undefined) {
    let found = node.above;
    while (found.below !== undefined) found = found.below;
    return found;
  }
  let child = node;
  while (child.parent !== undefined && child.parent.above === child) child = child.parent;
  return child.parent;
}
