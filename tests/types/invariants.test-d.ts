// Checked by the compiler only: the mistakes of tests/unit/invariants.test.ts that do not compile.
import { groundArea } from "../../src/area/index.ts";
import { measureOut } from "../../src/household/index.ts";
import { solveOutput, stripRate } from "../../src/output-rate/index.ts";
import type { Product } from "../../src/plan/index.ts";
import { carrierFor, leftoverArea, productAmount } from "../../src/tank-mix/index.ts";
import { convert, qty, type Volume } from "../../src/units/index.ts";

const rate = qty(20, "gal/ac");

// An inverted ratio, as a unit and as swapped arguments.
// @ts-expect-error
qty(2178, "ft2/gal");
// @ts-expect-error
leftoverArea({ volume: rate, rate: qty(2, "gal") });
// @ts-expect-error
solveOutput({ flow: qty(3, "mph"), speed: qty(0.4, "gal/min"), width: qty(20, "in") });

// Ground area for treated, and an area that does not say which it is.
// @ts-expect-error
carrierFor({ rate, area: groundArea(qty(1, "ac")) });
// @ts-expect-error
carrierFor({ rate, area: qty(1, "ac") });

// Fluid ounces for ounces of weight.
// @ts-expect-error
const volume: Volume = qty(5, "oz");
// @ts-expect-error
convert(qty(5, "oz"), "fl_oz");
// @ts-expect-error
const product: Product = { name: "Product A", form: "liquid", rate: qty(12, "kPa") };

// A number without its unit: no gallon and no spoon of anybody's by default.
// @ts-expect-error
stripRate({ used: 34, swath: qty(30, "in"), distance: qty(120, "ft") });
// @ts-expect-error
measureOut({ amount: 1.6, tools: "us-spoons", rule: "never-over" });
// @ts-expect-error
productAmount({ rate: 2, form: "liquid", carrier: qty(1, "gal"), carrierRate: rate });

void [volume, product];
