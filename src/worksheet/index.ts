export { ENGLISH } from "./english.js";
export type { Messages, TextKey } from "./messages.js";
export { renderText } from "./text.js";
export type { LineWords } from "./words/types.js";
export {
  type Fact,
  type Worksheet,
  type WorksheetOptions,
  type WrittenDose,
  type WrittenLine,
  type WrittenLoad,
  worksheet,
} from "./worksheet.js";
