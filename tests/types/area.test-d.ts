// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import { type GeodesicArea, geodesicArea } from "../../src/area/geodesic.ts";
import {
  boundaryArea,
  compositeArea,
  cropRate,
  groundArea,
  offsetsArea,
  plantCount,
  rectangleArea,
  rowBandsArea,
  treatAll,
  treatedArea,
  treatedFraction,
  treatPart,
  treeRowsArea,
  triangleArea,
} from "../../src/area/index.ts";
import {
  type GroundArea,
  type MassRate,
  qty,
  type TreatedArea,
  type VolumeRate,
} from "../../src/units/index.ts";

const ft = qty(5, "ft");
const ground: GroundArea = rectangleArea({ length: ft, width: ft });
const treated: TreatedArea = treatAll(ground);

// Ground area is never treated area, nor the reverse.
// @ts-expect-error
const noTreated: TreatedArea = ground;
// @ts-expect-error
const noGround: GroundArea = treated;
// @ts-expect-error
treatAll(treated);
// @ts-expect-error
treatPart({ ground: treated, fraction: 0.5 });
// @ts-expect-error
treatedFraction({ treated: ground, ground });
// @ts-expect-error
treatedFraction({ treated, ground: treated });
// @ts-expect-error
compositeArea({ add: [treated] });
// @ts-expect-error
plantCount({ ground: treated, rowSpacing: ft, plantSpacing: ft });
// @ts-expect-error
groundArea(treated);
// @ts-expect-error
treatedArea(ground);
// @ts-expect-error
treatAll(qty(5, "ac"));

// What has been measured otherwise is marked by hand.
const acres: GroundArea = groundArea(qty(5, "ac"));
const sprayed: TreatedArea = treatedArea(qty(5, "ac"));
const byOffsets: GroundArea = offsetsArea({ offsets: [ft, ft], spacing: ft, rule: "trapezoidal" });

// Other dimensions and bare numbers do not pass for lengths.
// @ts-expect-error
rectangleArea({ length: ft, width: qty(5, "gal") });
// @ts-expect-error
rectangleArea({ length: ft, width: 5 });
const corners = [
  [0, 0],
  [1, 0],
  [1, 1],
] as const;
const spatial = [
  [0, 0, 1],
  [1, 0, 1],
  [1, 1, 1],
] as const;
boundaryArea({ corners, unit: "ft" });
// @ts-expect-error
boundaryArea({ corners, unit: "ac" });
// @ts-expect-error
boundaryArea({ corners: spatial, unit: "ft" });
// @ts-expect-error
offsetsArea({ offsets: [ft, ft], spacing: ft });

// Either one length for all rows, or one for each.
rowBandsArea({ rows: 2, rowLength: ft, bandWidth: ft });
rowBandsArea({ rowLengths: [ft, ft], bandWidth: ft });
rowBandsArea({ rows: 2, rowLengths: [ft, ft], bandWidth: ft });
// @ts-expect-error
rowBandsArea({ rows: 2, bandWidth: ft });
// @ts-expect-error
rowBandsArea({ rowLength: ft, rowLengths: [ft, ft], bandWidth: ft });
// @ts-expect-error
treeRowsArea({ rows: 2, rowLength: ft, stripWidth: ft, sides: 3 });
// @ts-expect-error
triangleArea({ sides: [ft, ft] });

// A rate keeps its dimension.
const bands = { bandWidth: ft, rowSpacing: ft };
const volume: VolumeRate = cropRate({ ...bands, treatedRate: qty(2, "gal/ac") });
const mass: MassRate = cropRate({ ...bands, treatedRate: qty(2, "lb/ac") });
// @ts-expect-error
const mixed: MassRate = cropRate({ ...bands, treatedRate: qty(2, "gal/ac") });
// @ts-expect-error
cropRate({ ...bands, treatedRate: qty(2, "lb/gal") });

const walked: GeodesicArea = geodesicArea({
  type: "Polygon",
  coordinates: [
    [
      [7, 50],
      [8, 50],
      [8, 51],
    ],
  ],
});
// @ts-expect-error
geodesicArea({ type: "Point", coordinates: [7, 50] });

export { acres, byOffsets, mass, mixed, noGround, noTreated, sprayed, volume, walked };
