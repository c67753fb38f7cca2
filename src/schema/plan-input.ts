import { moved } from "../errors.js";
import type { MeasuringTool } from "../household/measuring-tool.js";
import { TOOLS, type ToolSetName, toolSetNames } from "../household/tools.js";
import type { PlanInput, Split, Sprayer } from "../plan/input.js";
import type { Currency } from "../plan/money.js";
import type { Thresholds } from "../plan/thresholds.js";
import type { Reserve } from "../tank-mix/carrier.js";
import { checked } from "../units/check.js";
import { ratio, sameDimension } from "../units/quantity.js";
import type { Volume } from "../units/types.js";
import { calibrationSchema, todaySchema } from "./calibration.js";
import {
  about,
  choice,
  count,
  fields,
  list,
  maybe,
  name,
  named,
  number,
  type Schema,
  text,
  words,
} from "./fields.js";
import { madeOnce, type ReadingOptions } from "./options.js";
import { byGiven, byList } from "./picks.js";
import { plotSchema } from "./plot.js";
import { productSchema } from "./product.js";
import { quantities } from "./quantity.js";

/**
 * The schema of a sprayer.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { sprayerSchema } from "swath-to-spoon/schema";
 *
 * console.log(sprayerSchema({ system: "imperial" }).parse({ tank: "4 gal" })); // { tank: { value: 4, unit: 'imp_gal' } }
 * ```
 */
export const sprayerSchema: (options?: ReadingOptions) => Schema<Sprayer> = /* @__PURE__ */ madeOnce(
  (options) => {
    const { of, orZero } = quantities(options);
    return named(
      "Sprayer",
      fields<Sprayer>({
        tank: about(of("volume"), "What the tank holds. More than 0."),
        workingFill: maybe(
          of("volume"),
          "How far it is filled, not over what it holds. The tank's capacity unless given.",
        ),
        lineVolume: maybe(
          orZero("volume"),
          "What hoses and boom hold: mixed, and not sprayed. None unless given.",
        ),
        leastLoad: maybe(
          orZero("volume"),
          "The smallest load that the pump draws to the end. Any unless given.",
        ),
        rowsPerPass: maybe(
          count(1, 100),
          "How many rows, beds or tree rows one pass sprays: the width of the test strip is the band's times these. 1 unless given.",
        ),
      }),
      "The sprayer that does the job.",
    );
  },
);

/**
 * The schema of a reserve: what is mixed to spare.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { reserveSchema } from "swath-to-spoon/schema";
 *
 * console.log(reserveSchema().parse({ roundUpTo: "1 qt" })); // { roundUpTo: { value: 1, unit: 'qt' } }
 * ```
 */
export const reserveSchema: (options?: ReadingOptions) => Schema<Reserve> = /* @__PURE__ */ madeOnce(
  (options) => {
    const { of, orZero } = quantities(options);
    return named(
      "Reserve",
      choice<Reserve>()(
        [
          fields<{ readonly percent: number }>({
            percent: about(number({ min: 0, max: 100 }), "Per cent of the sprayed volume, 0 to 100."),
          }),
          fields<{ readonly volume: Volume }>({ volume: about(orZero("volume"), "A volume, 0 or more.") }),
          fields<{ readonly roundUpTo: Volume }>({
            roundUpTo: about(of("volume"), "The total goes up to the next multiple of this volume."),
          }),
        ],
        byGiven([["percent"], ["volume"], ["roundUpTo"]]),
      ),
      "What is mixed to spare: per cent of the sprayed volume, a volume, or up to the next multiple of a volume.",
    );
  },
);

const TOOL_SETS = /* @__PURE__ */ Object.fromEntries(toolSetNames.map((set) => [set, 1])) as Record<
  ToolSetName,
  unknown
>;

/**
 * The schema of the tools that doses are measured with: the name of a set, or a list.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { toolsSchema } from "swath-to-spoon/schema";
 *
 * console.log(toolsSchema().parse("metric-spoons")); // metric-spoons
 * console.log(toolsSchema().parse([{ name: "jug", capacity: "1 L", graduation: "50 mL" }]).length); // 1
 * ```
 */
export const toolsSchema: (options?: ReadingOptions) => Schema<PlanInput["tools"]> = /* @__PURE__ */ madeOnce(
  (options) => {
    const size = quantities(options).of("volume", "mass");
    const tool = named(
      "MeasuringTool",
      fields<MeasuringTool>(
        {
          name: about(words(), "What it is called, as it is to be printed."),
          capacity: about(size, "What it holds when full, or the most that a scale weighs. More than 0."),
          graduation: maybe(
            size,
            "For a tool with marks: the amount between two marks. A tool without it is always filled whole.",
          ),
          least: maybe(
            size,
            "For a tool with marks: the least that it reads. One graduation where nothing is given.",
          ),
        },
        (given) => {
          // The marks of a tool that is told in full must go together.
          const { name: called, capacity, graduation } = given;
          if (called === undefined || capacity === undefined) return;
          // A mark so fine that its number goes beyond all counting.
          if (graduation !== undefined && sameDimension(capacity, graduation))
            moved(
              () => "graduation",
              () => ratio(capacity, graduation as typeof capacity),
            );
          moved(
            (path) => path.replace(/^\[0\]\.?/, ""),
            () => checked([given as MeasuringTool], TOOLS),
          );
        },
      ),
      "Something to measure with: a spoon, a cup, a syringe, a cylinder, a scale.",
    );
    return named(
      "Tools",
      choice<PlanInput["tools"]>()([list(tool), name<ToolSetName>(TOOL_SETS)], byList),
      "The tools that doses are measured with: the name of a set, or a list.",
    );
  },
);

function currencySchema(): Schema<Currency> {
  return fields<Currency>({
    code: about(text(), "What it is called, such as its ISO 4217 code. It is printed and not read."),
    decimals: maybe(count(0, 4), {
      description: "How many decimals it has, 0 to 4.",
      default: 2,
    }),
  });
}

function thresholdsSchema(options: ReadingOptions): Schema<Partial<Thresholds>> {
  const { of } = quantities(options);
  return named(
    "Thresholds",
    fields<Partial<Thresholds>>({
      leastRate: maybe(of("volumeRate"), "The least that such sprayers put out. More than 0."),
      mostRate: maybe(of("volumeRate"), "The most that such sprayers put out. More than 0."),
      slowest: maybe(
        of("speed"),
        "The slowest that a person walks, or a small machine drives, evenly. More than 0.",
      ),
      fastest: maybe(of("speed"), "The fastest. More than 0."),
      readingPercent: maybe(
        number({ above: 0 }),
        "How coarse the strip's reading may be, in per cent of what was used. More than 0.",
      ),
      calibrationDays: maybe(
        number({ above: 0 }),
        "How many days a calibration is trusted for. More than 0.",
      ),
      lastLoadPercent: maybe(
        number({ above: 0 }),
        "How small the last load may be, in per cent of a full one. More than 0.",
      ),
      bandSwath: maybe(
        of("length"),
        "A swath narrower than this looks like a band, and not like a pass over all of the ground. More than 0.",
      ),
    }),
    "From which point on a plan questions something, where that is to be other than usual.",
  );
}

/**
 * The schema of a whole spray job, as a form collects it: what `planApplication` takes, with text allowed for quantities.
 *
 * It composes with an app's own schemas, and zod's tools work on it. An app that wants the library's errors calls
 * {@link parsePlanInput} instead. No code is made from text, so a strict Content-Security-Policy allows it.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { planInputSchema } from "swath-to-spoon/schema";
 * import * as z from "zod/mini";
 *
 * const order = z.object({ customer: z.string(), job: planInputSchema() });
 * const read = order.safeParse({ customer: "Example Farm", job: { tools: "spoons" } });
 * console.log(read.error?.issues.map((issue) => issue.path.join("."))); // [ 'job.plot', 'job.calibration', 'job.sprayer', 'job.products', 'job.tools' ]
 * ```
 */
export const planInputSchema: (options?: ReadingOptions) => Schema<PlanInput> = /* @__PURE__ */ madeOnce(
  (options) => {
    const plot = plotSchema(options);
    return named(
      "PlanInput",
      fields<PlanInput>({
        plot: about(
          choice<PlanInput["plot"]>()([list(plot), plot], byList),
          "The plot, or all plots that one mix is for.",
        ),
        calibration: about(calibrationSchema(options), "How the sprayer was calibrated."),
        sprayer: about(sprayerSchema(options), "The sprayer."),
        reserve: maybe(reserveSchema(options), "What is mixed to spare. None unless given."),
        split: maybe(name<Split>({ "full-then-part": 1, equal: 1, "whole-rows": 1, "whole-plots": 1 }), {
          description:
            "How the mix is parted into loads: full tanks and a part load, equal loads, or whole rows or plots to a load.",
          default: "full-then-part" satisfies Split,
        }),
        products: about(list(productSchema(options)), "The products, at least one."),
        tools: about(toolsSchema(options), "The tools that doses are measured with."),
        today: maybe(
          todaySchema(options),
          "The day of spraying and its conditions: what a calibration record is compared with.",
        ),
        addedWater: maybe(
          quantities(options).orZero("volume"),
          "Water that someone means to add without product. It is warned of, and changes no number.",
        ),
        currency: maybe(currencySchema(), "The currency of the prices."),
        thresholds: maybe(
          thresholdsSchema(options),
          "The thresholds of warnings that are to be other than usual.",
        ),
      }),
      "A whole spray job, as a form collects it.",
    );
  },
);
