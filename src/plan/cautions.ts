import { frozen } from "../frozen.js";

/** A caution that belongs on every sheet. */
export interface Caution {
  /** A fixed name, for an app that words it in another language. */
  readonly code:
    | "label"
    | "clean-water"
    | "protection"
    | "drift"
    | "rinse"
    | "tools"
    | "recalibrate"
    | "local-rules"
    | "spreader"
    | "protection-spreading"
    | "sweep"
    | "local-rules-spreading";
  /** The caution in English. */
  readonly message: string;
}

const LABEL: Caution = {
  code: "label",
  message: "The label is the law. Where this sheet and the label differ, follow the label.",
};

const TOOLS: Caution = {
  code: "tools",
  message: "Mark the spoons, cups and syringes used for pesticides and never use them for food again.",
};

/** The usual cautions of the trade, printed with every plan. They change no number. */
export const CAUTIONS: readonly Caution[] = /* @__PURE__ */ frozen<readonly Caution[]>([
  LABEL,
  {
    code: "clean-water",
    message:
      "Calibrate with clean water. Fill the hose and boom first, measure the refill, and use the same person, pace, pressure and nozzles as on spray day.",
  },
  {
    code: "protection",
    message: "Wear the protective equipment on the label when you measure, mix and spray.",
  },
  {
    code: "drift",
    message:
      "Check the wind before and while you spray, and don't spray when it could carry drift to people, homes, water, bees or other crops.",
  },
  {
    code: "rinse",
    message:
      "Rinse each empty liquid container three times, and pour every rinse into the tank before you top it up.",
  },
  TOOLS,
  {
    code: "recalibrate",
    message: "Calibrate again when the person, pace, pressure, nozzles, ground or sprayer changes.",
  },
  {
    code: "local-rules",
    message:
      "Follow local rules on what may be sprayed, who may spray it, and where leftover mix and rinse water may go.",
  },
]);

/** The usual cautions for granules and dry fertilizer. */
export const SPREADING_CAUTIONS: readonly Caution[] = /* @__PURE__ */ frozen<readonly Caution[]>([
  LABEL,
  {
    code: "spreader",
    message:
      "Calibrate with the product itself, at your usual pace. Do it again when the person, pace, product, weather or ground changes.",
  },
  {
    code: "protection-spreading",
    message: "Wear the protective equipment on the label when you weigh, fill, spread and clean up.",
  },
  {
    code: "sweep",
    message:
      "Sweep granules off hard surfaces back onto the plot. Keep them out of drains, ditches and water.",
  },
  TOOLS,
  {
    code: "local-rules-spreading",
    message:
      "Follow local rules on what may be spread, who may spread it, when and how near to water, and what to do with what is left.",
  },
]);
