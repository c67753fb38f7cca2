// The package brings no types; these are the parts that the tests use.
declare module "@lhncbc/ucum-lhc" {
  interface Utils {
    getSpecifiedUnit(code: string, mode: "validate"): { unit: { magnitude_: number } | null };
    validateUnitString(code: string): { status: "valid" | "invalid" | "error" };
    convertUnitTo(from: string, value: number, to: string): { toVal: number | null };
  }
  export const UcumLhcUtils: { getInstance(): Utils };
}
