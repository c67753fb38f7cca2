import { SprayMathError } from "../../../src/errors.ts";

/** The code and path of the error that `work` throws; anything else it throws, or nothing, fails the test that asked. */
export function faultOf(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    if (error instanceof SprayMathError) return `${error.code} ${error.path}`;
    throw error;
  }
  throw new Error("nothing was thrown");
}
