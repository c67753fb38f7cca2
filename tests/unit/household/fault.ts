import { refusal } from "../../helpers/refusal.ts";

/** The code and the path of what `work` throws, which must be the library's own error. */
export function faultOf(work: () => unknown): string {
  const { code, path } = refusal(work);
  return `${code} ${path}`;
}
