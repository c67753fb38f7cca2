/** The same value, which nobody can change any more, at any depth: a table that every later call reads. */
/* @__NO_SIDE_EFFECTS__ */
export function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.values(value).forEach(frozen);
  return Object.freeze(value);
}
