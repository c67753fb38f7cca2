import type { LoadOf, LoadProduct } from "./result.js";
import type { Warning } from "./warnings.js";

/** Whether a job is not to be sprayed as it is planned. */
export function isRefused({ warnings }: { readonly warnings: readonly Warning[] }): boolean {
  return warnings.some(({ severity }) => severity === "refusal");
}

/** The loads of a job, each dose marked where the job is refused: a dose may be shown by itself, away from its warnings. */
export function markedIfRefused<L extends LoadOf<LoadProduct>>(
  loads: readonly L[],
  warnings: readonly Warning[],
): readonly L[] {
  if (!isRefused({ warnings })) return loads;
  return loads.map((load) => ({
    ...load,
    products: load.products.map((product) => ({
      ...product,
      measured: { ...product.measured, refused: true as const },
    })),
  }));
}
