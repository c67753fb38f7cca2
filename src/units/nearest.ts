/**
 * The candidate spelled most like `text`: fewest letters to add, drop, change or switch with the next, capitals and punctuation
 * aside. None where more than `most` letters would have to change, a third of them unless given: a far-fetched guess misleads,
 * and of two letters neither may change (DF, dry flowable, is no DC).
 */
export function nearest(text: string, candidates: readonly string[], most?: number): string | undefined {
  const plain = simplify(text);
  if (plain === "") return undefined;
  let best: string | undefined;
  let fewest = (most ?? Math.floor(plain.length / 3)) + 1;
  for (const candidate of candidates) {
    const edits = editDistance(plain, simplify(candidate));
    if (edits < fewest) [best, fewest] = [candidate, edits];
  }
  return best;
}

/** How many letters of one text would have to change to make the other, capitals and punctuation aside. */
export function editsBetween(text: string, other: string): number {
  return editDistance(simplify(text), simplify(other));
}

function simplify(text: string): string {
  return withoutAccents(text.toLowerCase()).replace(/[^a-z0-9%]/g, "");
}

/** árbol is arbol. */
export function withoutAccents(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "");
}

// Levenshtein's distance, one row of the table at a time; two letters that were switched are one slip.
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwitched = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const switched = isSwitched ? (before[j - 2] ?? 0) + 1 : change;
      next.push(Math.min(change, switched, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    [before, row] = [row, next];
  }
  return row[b.length] ?? 0;
}
