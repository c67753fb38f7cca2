// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import {
  bandsWidth,
  boomHeight,
  boomWidth,
  effectiveWidth,
  passesOver,
  patternUniformity,
  treeRowWidth,
  widestSwath,
} from "../../src/swath/index.ts";
import { type Fraction, type Length, qty } from "../../src/units/index.ts";

const ft = qty(5, "ft");
const boom: Length = boomWidth({ nozzles: 4, nozzleSpacing: ft });
const treated: Length = bandsWidth({ bands: 4, bandWidth: ft }).treated;
// The ground width is there only where the row spacing was given, so it has to be looked for.
// @ts-expect-error
const ground: Length = bandsWidth({ bands: 4, bandWidth: ft }).ground;

effectiveWidth({ width: ft, overlap: ft });
effectiveWidth({ width: ft, overlap: qty(10, "%") });
// @ts-expect-error
effectiveWidth({ width: ft, overlap: 0.1 });
// @ts-expect-error
boomWidth({ nozzles: qty(4, "1"), nozzleSpacing: ft });
// @ts-expect-error
treeRowWidth({ rowSpacing: ft, sides: 3 });
// @ts-expect-error
boomHeight({ nozzleSpacing: ft, angleDegrees: 80, overlap: 100 });
// @ts-expect-error
passesOver({ length: ft, width: ft, swath: ft, speed: ft });

const pattern = { catches: [qty(1, "mL"), qty(2, "mL")], spacing: ft, travel: "one-way" } as const;
const cv: Fraction = patternUniformity({ ...pattern, swath: ft }).cv;
// @ts-expect-error
patternUniformity({ ...pattern, travel: "round", swath: ft });
// @ts-expect-error
widestSwath({ ...pattern, limit: 15 });
// @ts-expect-error
widestSwath(pattern);

export { boom, cv, ground, treated };
