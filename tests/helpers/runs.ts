// How many times the usual number of tries: fewer in mutation testing, where every mutant runs the properties again,
// more in the long run.
const factor = Number(process.env.PROPERTY_RUNS ?? 1);

/** The number of random inputs that a property is tried on, out of a usual number. */
export function runs(usual: number): { readonly numRuns: number } {
  return { numRuns: Math.max(1, Math.round(usual * factor)) };
}
