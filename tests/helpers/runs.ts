// The part of the usual number of tries that is made. The tests say the full number, which `npm run fuzz` and the tables of
// docs/accuracy.md are made with; `npm test` makes a tenth, so that it is run often.
const factor = Number(process.env.PROPERTY_RUNS ?? 0.1);

/** The number of random inputs that a property is tried on, out of a usual number; `inTest` of them in `npm test`, if given. */
export function runs(usual: number, inTest?: number): { readonly numRuns: number } {
  const tries = process.env.PROPERTY_RUNS === undefined ? inTest : undefined;
  return { numRuns: Math.max(1, Math.round(tries ?? usual * factor)) };
}
