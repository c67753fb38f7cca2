const MODULUS = 2 ** 31 - 1;
const MULTIPLIER = 16_807;

/** The largest seed. */
export const MOST_SEED: number = MODULUS - 2;

/**
 * The next number of the "minimal standard" generator: 16,807 × state mod 2^31 − 1. Every product fits a float64 exactly.
 *
 * Source: S. K. Park and K. W. Miller, "Random number generators: good ones are hard to find", Communications of the ACM
 * 31 (10), 1988, pp. 1192–1201.
 */
export function nextState(state: number): number {
  return (MULTIPLIER * state) % MODULUS;
}

/** Draws: the same from the same seed. */
export interface Draw {
  /** One of a list. */
  readonly pick: <T>(list: readonly T[]) => T;
}

/** Draws that go by a seed from 0 to {@link MOST_SEED}, the same on every machine. */
export function drawFrom(seed: number): Draw {
  let state = seed + 1;
  const below = (count: number): number => {
    state = nextState(state);
    return Math.floor(((state - 1) / (MODULUS - 1)) * count);
  };
  // Seeds that lie side by side begin with numbers that do: the first few are not used.
  for (let i = 0; i < 4; i++) below(1);
  return {
    pick: (list) => list[below(list.length)] as (typeof list)[number],
  };
}
