// Writes a made-up file of plots: node generate.mjs rows [file] [--seed 1] [--faulty 0.01]
// The same seed gives the same file. All farms and products in it are invented.
import { createWriteStream } from "node:fs";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { parseArgs } from "node:util";

const HEADER =
  "farm,plot,kind,rows,row_length (ft),band_width (in),row_spacing (ft),length (ft),width (ft)," +
  "strip_used (fl_oz),strip_swath (in),strip_distance (ft),tank (gal),line_volume (fl_oz)," +
  "reserve_percent,product,form,rate,label_max,tools";
const FARMS = ["Willow Bend", "Far Meadow", '"Low Field, north"', "Stony Brook", "Három Tölgy", "Gatehouse"];
const TOOLS = ["us-spoons", "us-household", "syringes", "cylinders"];
const FAULTS = [
  (row) => ({ ...row, rate: "" }),
  (row) => ({ ...row, rate: "2 lb/ac" }),
  (row) => ({ ...row, rate: "9 pt/ac" }),
  (row) => ({ ...row, used: "about 40" }),
  (row) => ({ ...row, used: "-4" }),
  (row) => ({ ...row, tools: "ladle" }),
];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seed: { type: "string", default: "1" }, faulty: { type: "string", default: "0.01" } },
});
const [rows = "1000", file] = positionals;

// Park and Miller's generator: the same file on every machine.
let state = Number(values.seed);
const random = () => {
  state = (state * 48_271) % 2_147_483_647;
  return state / 2_147_483_647;
};
const whole = (from, to) => from + Math.floor(random() * (to - from + 1));
const oneOf = (list) => list[whole(0, list.length - 1)];

function rowText(i) {
  const bands = random() < 0.6;
  const row = {
    farm: oneOf(FARMS),
    plot: `Plot ${i + 1}`,
    place: bands
      ? `row-bands,${whole(4, 40)},${whole(80, 400)},${whole(18, 36)},${whole(4, 6)},,`
      : `rectangle,,,,,${whole(60, 400)},${whole(30, 200)}`,
    used: String(whole(240, 480) / 8),
    strip: `${bands ? 30 : 48},${whole(10, 30) * 10}`,
    sprayer: `4,${whole(4, 12)},${oneOf(["", "5", "10"])}`,
    rate: `${whole(4, 16) / 8} pt/ac`,
    tools: oneOf(TOOLS),
  };
  const { farm, plot, place, used, strip, sprayer, rate, tools } =
    random() < Number(values.faulty) ? oneOf(FAULTS)(row) : row;
  return `${farm},${plot},${place},${used},${strip},${sprayer},Product A,liquid,${rate},2 pt/ac,${tools}\r\n`;
}

// Large pieces: one write per row would cost more than making the row.
function* pieces() {
  let text = `${HEADER}\r\n`;
  for (let i = 0; i < Number(rows); i++) {
    text += rowText(i);
    if (text.length < 65_536) continue;
    yield text;
    text = "";
  }
  yield text;
}

await pipeline(Readable.from(pieces()), file === undefined ? process.stdout : createWriteStream(file));
