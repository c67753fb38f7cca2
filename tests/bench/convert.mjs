// `convert` on a cached pair against hand-written arithmetic and general-purpose unit libraries.

import Big from "big.js";
import configureMeasurements from "convert-units";
import volume from "convert-units/definitions/volume";
import Qty from "js-quantities";
import { all, create } from "mathjs";
import UnitMath from "unitmath";
import { convert, qty } from "../../dist/units/index.js";
import { medians, printRatios } from "./measure.mjs";
import { report } from "./speed.mjs";

const math = create(all);
const fluent = configureMeasurements({ volume });

// The same exact conversion that the library makes once a pair: convert-units' fluent call in exact decimals.
const unit = (to_anchor) => ({ name: { singular: "", plural: "" }, to_anchor });
const exactTable = { volume: { systems: { all: { gal: unit("3.785411784"), L: unit("1") } } } };
const big = (operation) => (left, right) => new Big(left)[operation](right);
const exactFluent = configureMeasurements(exactTable, {
  create: (value) => new Big(value),
  add: big("plus"),
  sub: big("minus"),
  mul: big("times"),
  div: big("div"),
  lt: big("lt"),
  lte: big("lte"),
  gt: big("gt"),
  gte: big("gte"),
});
const values = Float64Array.from({ length: 1024 }, (_, i) => 1 + i / 7);
const at = (i) => values[i & 1023];

// What is computed is kept where the optimizer cannot see that nobody reads it.
let kept;
const keep = (value) => {
  kept = value;
};

const quantities = Array.from(values, (value) => qty(value, "gal"));
const rates = Array.from(values, (value) => qty(value, "fl_oz/ac"));

const times = await medians(
  {
    "hand-written multiply and object literal": (i) =>
      keep({ value: quantities[i & 1023].value * 3.785411784, unit: "L" }),
    "convert, simple unit (gal to L)": (i) => keep(convert(quantities[i & 1023], "L")),
    "convert, compound (fl_oz/ac to mL/m2)": (i) => keep(convert(rates[i & 1023], "mL/m2")),
    "convert-units, fluent call in exact decimals": (i) =>
      keep(exactFluent(at(i)).from("gal").to("L").toNumber()),
    "convert-units, fluent call in floats, its own table": (i) => keep(fluent(at(i)).from("gal").to("l")),
    "js-quantities": (i) => keep(new Qty(at(i), "gal").to("L")),
    mathjs: (i) => keep(math.unit(at(i), "gallon").to("litre")),
    unitmath: (i) => keep(UnitMath(at(i), "gal").to("L")),
  },
  200,
);

printRatios("convert on a cached pair", times, "hand-written multiply and object literal");
const ours = times["convert, simple unit (gal to L)"];
for (const name of [
  "convert-units, fluent call in exact decimals",
  "convert-units, fluent call in floats, its own table",
  "js-quantities",
  "mathjs",
  "unitmath",
]) {
  console.log(`  convert is ${(times[name] / ours).toFixed(1)} times as fast as ${name}`);
}
const byHand = times["hand-written multiply and object literal"];
const compound = times["convert, compound (fl_oz/ac to mL/m2)"];
report([
  {
    what: "`convert`, a simple unit, pair met before",
    time: ours,
    against: [
      [ours / byHand, "times a multiplication and an object written by hand"],
      [times.unitmath / ours, "times as fast as unitmath"],
      [times.mathjs / ours, "as mathjs"],
      [times["js-quantities"] / ours, "as js-quantities"],
    ],
  },
  {
    what: "the same, a compound unit",
    time: compound,
    against: [[compound / byHand, "times the same by hand"]],
  },
]);
if (kept === undefined) throw new Error("nothing was computed");
