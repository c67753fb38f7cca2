import { refusal } from "../units/message.js";

// An input is a few objects deep; deeper is one that holds itself.
const DEEPEST = 20;

/** A copy of plain data: what the caller changes later does not change the plan. */
export function copied<T>(value: T, depth = 0): T {
  if (typeof value !== "object" || value === null) return value;
  if (depth > DEEPEST) {
    throw refusal(
      "unreadable",
      "too-deep",
      "",
      "This input has objects in objects without an end. Enter plain data.",
    );
  }
  if (Array.isArray(value)) return Array.from(value, (one) => copied(one, depth + 1)) as T;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, copied(one, depth + 1)])) as T;
}
