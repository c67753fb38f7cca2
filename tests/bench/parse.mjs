// How long it takes to read an ordinary job: as objects, as text, and by its zod type.
import { planApplication } from "../../dist/plan/index.js";
import { parsePlanInput, planInputSchema } from "../../dist/schema/index.js";
import { medians, printRatios } from "./measure.mjs";
import { report } from "./speed.mjs";

const typed = {
  plot: { kind: "row-bands", rows: 14, rowLength: "160 ft", bandWidth: "30 in", rowSpacing: "5 ft" },
  calibration: { kind: "strip", used: "34 fl oz", swath: "30 in", distance: "120 ft" },
  sprayer: { tank: "4 gal", workingFill: "3.5 gal", lineVolume: "10 fl oz" },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: "1.5 pt/ac", label: { max: "2 pt/ac" } },
    { name: "Product B", form: "dry", rate: "12 oz wt/ac" },
  ],
  tools: "us-spoons",
};
const job = parsePlanInput(typed);
const schema = planInputSchema();

const times = await medians(
  {
    "parsePlanInput, objects": () => parsePlanInput(job),
    "planInputSchema, objects": () => schema.parse(job),
    "parsePlanInput, text": () => parsePlanInput(typed),
    planApplication: () => planApplication(job),
  },
  20,
);
printRatios("an ordinary job", times, "parsePlanInput, objects");
const { planApplication: plan, "parsePlanInput, objects": objects, "parsePlanInput, text": text } = times;
report([
  {
    what: "`parsePlanInput`, quantities as objects",
    time: objects,
    against: [[objects / plan, "times `planApplication` of the job"]],
  },
  {
    what: "the same, quantities as text",
    time: text,
    against: [[text / objects, "times the same as objects"]],
  },
]);
