// The columns that a file of plots may have, and where in a job each of them goes.
import { dimensionOf, isUnit } from "swath-to-spoon/units";

// A column with a dimension holds quantities: its unit stands in the header, as in "row_length (ft)", and the cells are
// numbers; or it does not, and the cells have their own, as in "1 1/2 pt/ac". `any` is for rates, because their unit depends on the form.
const UNIT_OF = {
  length: "a unit of length, such as ft",
  volume: "a unit of volume, such as gal",
  any: "a unit of a rate, such as pt/ac",
};

const COLUMNS = {
  farm: {},
  plot: { path: "plot.name", needed: true },
  kind: { path: "plot.kind", needed: true },
  rows: { path: "plot.rows", number: true },
  row_length: { path: "plot.rowLength", dimension: "length" },
  band_width: { path: "plot.bandWidth", dimension: "length" },
  row_spacing: { path: "plot.rowSpacing", dimension: "length" },
  length: { path: "plot.length", dimension: "length" },
  width: { path: "plot.width", dimension: "length" },
  strip_used: { path: "calibration.used", dimension: "volume", needed: true },
  strip_swath: { path: "calibration.swath", dimension: "length", needed: true },
  strip_distance: { path: "calibration.distance", dimension: "length", needed: true },
  tank: { path: "sprayer.tank", dimension: "volume", needed: true },
  line_volume: { path: "sprayer.lineVolume", dimension: "volume" },
  reserve_percent: { path: "reserve.percent", number: true },
  product: { path: "products[0].name", needed: true },
  form: { path: "products[0].form", needed: true },
  rate: { path: "products[0].rate", dimension: "any", needed: true },
  label_max: { path: "products[0].label.max", dimension: "any" },
  tools: { path: "tools", needed: true },
};

/** The columns that a file of refused rows has before its own. They are skipped when the fixed file is read again. */
export const REFUSED_COLUMNS = ["refused_line", "refused_for"];

/** What the person who runs the batch must fix before it can start. */
export class BatchError extends Error {}

/** Returns the header as plain data, one entry per column. Throws a BatchError that names a wrong column. */
export function headerOf(titles) {
  const header = titles.map((title, i) => columnOf(title, `line 1, column ${i + 1}`));
  const names = header.map(({ name }) => name);
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined)
    throw new BatchError(`line 1: The column ${twice} appears twice. Keep one of them.`);
  const missing = Object.keys(COLUMNS).filter((name) => COLUMNS[name].needed && !names.includes(name));
  if (missing.length > 0) {
    throw new BatchError(`line 1: Missing columns: ${missing.join(", ")}. Add a column for each.`);
  }
  return header;
}

function columnOf(title, place) {
  const [, name = "", unit] = /^\s*([^()]*?)\s*(?:\(([^()]*)\)\s*)?$/.exec(title) ?? [];
  if (REFUSED_COLUMNS.includes(name)) return { name, title };
  if (!Object.hasOwn(COLUMNS, name)) {
    const known = Object.keys(COLUMNS).join(", ");
    throw new BatchError(`${place}: Unknown column ${JSON.stringify(title)}. Use one of: ${known}.`);
  }
  const { path, number, dimension } = COLUMNS[name];
  // The fields on the way to the value, such as products, 0 and rate: taken apart once, not for every row.
  const keys = path?.match(/[^.[\]]+/g);
  if (unit === undefined) return { name, title, keys, number };
  const fits = dimension && isUnit(unit) && (dimension === "any" || dimensionOf(unit) === dimension);
  if (!fits) {
    const fix = dimension === undefined ? `${name} has no unit` : `${name} needs ${UNIT_OF[dimension]}`;
    throw new BatchError(`${place}: ${JSON.stringify(title)} has the wrong unit: ${fix}.`);
  }
  return { name, title, keys, unit };
}

/** Returns the title of the column that an error's path belongs to, or the path if there is no such column. */
export function titleAt(header, path) {
  const place = Object.keys(COLUMNS).find((name) => {
    const own = COLUMNS[name].path;
    return own !== undefined && (path === own || path.startsWith(`${own}.`));
  });
  return header.find(({ name }) => name === place)?.title ?? place ?? path;
}
