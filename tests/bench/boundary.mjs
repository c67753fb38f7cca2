// A boundary of twice the corners must take little more than twice the time: printed for 1,200 to 9,600 corners.

import { geodesicArea } from "../../dist/area/geodesic.js";
import { boundaryArea } from "../../dist/area/index.js";

const SIZES = [1200, 2400, 4800, 9600];

/** A field walked round: the corners of a circle that is pushed in and out. */
function field(n) {
  return Array.from({ length: n }, (_, i) => {
    const angle = (2 * Math.PI * i) / n;
    const radius = 200 + 30 * Math.sin(5 * angle) + 8 * Math.sin(41 * angle);
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

/** A comb of long thin teeth, each beside all the others: the worst there is for a search by boxes or by a grid. */
function comb(n) {
  const teeth = Array.from({ length: Math.floor(n / 4) }, (_, i) => [
    [i, 0],
    [i + 0.1, 900 + i / 100],
    [i + 0.5, 900],
    [i + 0.6, 1],
  ]).flat();
  return [...teeth, [n, -1], [-1, -1]].map(([x, y]) => [x / 50 + y, y / 50 - x]);
}

const onEarth = (corners) => ({
  type: "Polygon",
  coordinates: [corners.map(([x, y]) => [7 + x / 1e5, 50 + y / 1e5])],
});

// The best of many: what the work takes when nothing else runs.
function seconds(work) {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 25; i++) {
    const start = process.hrtime.bigint();
    work();
    best = Math.min(best, Number(process.hrtime.bigint() - start) / 1e9);
  }
  return best;
}

for (const [name, shape, area] of [
  ["boundaryArea, a field", field, (corners) => boundaryArea({ corners, unit: "m" })],
  ["boundaryArea, a comb", comb, (corners) => boundaryArea({ corners, unit: "m" })],
  ["geodesicArea, a field", field, (corners) => geodesicArea(onEarth(corners))],
]) {
  console.log(`\n${name} (best ms of 25; ratio to half as many corners)`);
  let before;
  let first;
  for (const n of SIZES) {
    const corners = shape(n);
    const time = seconds(() => area(corners));
    const ratio = before === undefined ? "" : `${(time / before).toFixed(2)}x`;
    console.log(
      `  ${String(n).padStart(6)} corners ${(time * 1000).toFixed(2).padStart(10)}  ${ratio.padStart(7)}`,
    );
    before = time;
    first ??= time;
  }
  console.log(
    `  ${SIZES.at(-1) / SIZES[0]} times the corners: ${(before / first).toFixed(1)} times the time`,
  );
}
