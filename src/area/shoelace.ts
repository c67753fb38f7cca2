import type { Corner } from "./crossing.js";

/**
 * Twice the area inside a boundary of straight sides, more than 0 where it runs anticlockwise: Σ xᵢ × yᵢ₊₁ − xᵢ₊₁ × yᵢ.
 *
 * The products of map coordinates (4,500,000 m north) are many million times the area, so each product and each sum is kept
 * with its rounding error. The errors are added at the end: as exact as if computed with twice the digits (T. Ogita, S. M. Rump
 * and S. Oishi, Accurate sum and dot product, 2005).
 */
export function twiceArea(corners: readonly Corner[]): number {
  let total = 0;
  let lost = 0;
  const add = (a: number, b: number): void => {
    const product = a * b;
    const next = total + product;
    const rounded = next - total;
    lost += total - (next - rounded) + (product - rounded) + productError(a, b, product);
    total = next;
  };
  for (let i = 0; i < corners.length; i++) {
    const [x, y] = corners[i] as Corner;
    const [nextX, nextY] = corners[(i + 1) % corners.length] as Corner;
    add(x, nextY);
    add(-nextX, y);
  }
  return total + lost;
}

// What a product lost in rounding (T. J. Dekker, A floating-point technique for extending the available precision, 1971).
function productError(a: number, b: number, product: number): number {
  const [aHigh, bHigh] = [highHalf(a), highHalf(b)];
  const [aLow, bLow] = [a - aHigh, b - bHigh];
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
}

function highHalf(a: number): number {
  const scaled = 134217729 * a;
  return scaled - (scaled - a);
}
