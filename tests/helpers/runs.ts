// The part of the usual number of tries that is made. The tests say the full number, which `npm run fuzz` and the tables of
// docs/accuracy.md are made with; `npm test` makes a tenth, so that it is run often.
const factor = Number(process.env.PROPERTY_RUNS ?? 0.1);

/** The number of random inputs that a property is tried on, out of a usual number. */
export function runs(usual: number): { readonly numRuns: number } {
  return { numRuns: Math.max(1, Math.round(usual * factor)) };
}
