/** A caution that belongs on every sheet. */
export interface Caution {
  /** A fixed name, for an app that words it in another language. */
  readonly code: "label" | "clean-water" | "protection" | "tools" | "recalibrate" | "local-rules";
  /** The caution in English. */
  readonly message: string;
}

/** The usual cautions of the trade, printed with every plan. They change no number. */
export const CAUTIONS: readonly Caution[] = [
  {
    code: "label",
    message: "The label is the law. Where this sheet and the label differ, the label decides.",
  },
  {
    code: "clean-water",
    message:
      "Calibrate with clean water only: lines charged before the start, the refill measured, the same person, pace, pressure and nozzles as on the day.",
  },
  {
    code: "protection",
    message: "Wear the protective equipment the label names, for measuring and mixing as for spraying.",
  },
  {
    code: "tools",
    message:
      "Keep spoons, cups and syringes used here for pesticides only: marked, and never back in a kitchen.",
  },
  {
    code: "recalibrate",
    message: "Calibrate again when the person, pace, pressure, nozzles, ground or sprayer changes.",
  },
  {
    code: "local-rules",
    message:
      "Local rules and licensed practice decide what may be sprayed, by whom, and where left-over mix and rinse water go.",
  },
];
