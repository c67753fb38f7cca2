import { joinPath } from "../errors.js";
import type { LabelFinding } from "../tank-mix/findings.js";
import { type LabelInput, labelFindingsOf, ratesOf } from "../tank-mix/label-limits.js";
import {
  isRange,
  type LabelRate,
  ownUnitOr,
  rateUsed,
  type SingleRate,
  sizesFor,
} from "../tank-mix/label-rate.js";
import { unusualFindingsOf } from "../tank-mix/unusual.js";
import { convertValue, inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { ratioOf } from "../units/quantity.js";
import { resolveUnit } from "../units/resolve.js";
import type { Concentration, MassRate, Quantity, Unit, VolumeRate, VolumeUnit } from "../units/types.js";
import type { PlanInput, Product } from "./input.js";
import type { KnownMix } from "./mix.js";
import { type PlotName, plotInEnglish, plotNames } from "./plot.js";
import type { JobArea, PlotAreas } from "./plot-areas.js";
import { singlesOf } from "./rates-fit.js";
import type { ProductTotal } from "./result.js";
import { asPercent, type Warning, warning } from "./warnings.js";

/** What one place gets of a product: its sizes, and the rate that it comes to there. */
export interface PlaceDose {
  /** The plot's name; nothing where the plots are one. */
  readonly name?: PlotName | undefined;
  readonly sizes: KnownMix["sizes"];
  readonly rate: LabelRate;
}

/** What a product's label has against the job on its plots, and what its name and its figures may lead to. Trusts its input. */
export function productWarnings(
  product: Product,
  i: number,
  { plot }: PlanInput,
  area: JobArea,
  rate: VolumeRate,
  { strength }: ProductTotal,
): Warning[] {
  const names = plotNames(plot);
  const doses = dosesOnPlots(product, area, names, rate, strength);
  return [
    ...dosesWarnings(product, i, doses, strength),
    ...unevenWarnings(product, `products[${i}]`, area, names),
  ];
}

/** What a product's label has against these doses, and what its name and its figures may lead to. Trusts its input. */
export function dosesWarnings(
  product: Product,
  i: number,
  doses: readonly PlaceDose[],
  strength: Concentration,
): Warning[] {
  const at = `products[${i}]`;
  const { name, form, bulkDensity } = product;
  const unusual = unusualFindingsOf({ rate: product.rate, strength, bulkDensity });
  return [
    ...unusual.map((finding) => ofProduct(finding, at, { product: name })),
    ...labelWarnings(product, at, doses),
    ...ouncesWarnings(name, form, at),
  ];
}

/** A plot's sizes, for what a label says of it. */
export function sizesOnPlot(
  { treated, ground, rowLength }: Pick<PlotAreas, "treated" | "ground" | "rowLength">,
  carrierRate: VolumeRate,
): PlaceDose["sizes"] {
  return { carrierRate, area: treated, ground, rowLength };
}

/**
 * One mix goes on all plots: per treated area each gets the same. Per ground or per length of row they don't, where one is
 * sprayed on more of its ground than another. What a label says of those is then held against each plot alone.
 */
function dosesOnPlots(
  product: Product,
  { plots, ...together }: JobArea,
  names: readonly PlotName[],
  carrierRate: VolumeRate,
  strength: Concentration,
): PlaceDose[] {
  const { rate } = product;
  if (plots.length === 1 || !ratesOf(product).some(([, one]) => dependsOnPlot(one)))
    return [{ sizes: sizesOnPlot(together, carrierRate), rate }];
  const [single] = rateUsed(rate, "");
  const applied = ratePerArea(strength, carrierRate, single);
  return plots.map((areas, i) => ({
    name: names[i] as PlotName,
    sizes: sizesOnPlot(areas, carrierRate),
    rate: isRange(rate) ? { ...rate, chosen: applied } : applied,
  }));
}

function dependsOnPlot(rate: LabelRate): boolean {
  return singlesOf(rate).some(([, single]) =>
    sizesFor(single).some((size) => size === "ground" || size === "rowLength"),
  );
}

/** What a strength of the mix comes to per treated area, in the unit of a rate where that is per area. */
function ratePerArea(
  strength: Concentration,
  carrierRate: VolumeRate,
  like: SingleRate,
): VolumeRate | MassRate {
  const { over, per } = resolveUnit(strength.unit);
  const { per: area } = resolveUnit(carrierRate.unit);
  const direct = `${over}/${area}` as Unit;
  const value = strength.value * inUnit(carrierRate, `${per as VolumeUnit}/${area}` as VolumeRate["unit"]);
  const unit = ownUnitOr(like, direct);
  return { value: convertValue(value, direct, unit), unit } as VolumeRate | MassRate;
}

/** What the label has against a product on each of these plots; of like findings that on the plot where it is furthest off. */
export function labelWarnings(
  { name, form, label, soFar }: Pick<Product, "name" | "form" | "label" | "soFar">,
  at: string,
  doses: readonly PlaceDose[],
): Warning[] {
  const found = new Map<
    string,
    { readonly finding: LabelFinding; readonly off: number; readonly plot: PlotName; readonly on: number }
  >();
  for (const { sizes, rate, name: plot = "" } of doses) {
    // A single rate without limits was checked when its amount was worked out.
    if (label === undefined && soFar === undefined && !isRange(rate)) continue;
    const input: LabelInput = { rate, form, ...sizes, label: label ?? {}, soFar };
    for (const finding of labelFindingsOf(input, at)) {
      const off = offBy(finding);
      const before = found.get(finding.code);
      const on = before?.finding.message === finding.message ? before.on + 1 : 1;
      if (before === undefined || off > before.off) found.set(finding.code, { finding, off, plot, on });
      else found.set(finding.code, { ...before, on });
    }
  }
  // What is the same on every plot is no plot's own.
  return [...found.values()].map(({ finding, plot, on }) =>
    ofProduct(finding, at, on < doses.length ? { product: name, plot } : { product: name }),
  );
}

/** How far a finding is from its limit, to find the plot that it is worst on. */
function offBy({ figures }: LabelFinding): number {
  const { rate, max, min } = figures;
  const limit = max ?? min;
  if (typeof rate !== "object" || typeof limit !== "object") return 0;
  return Math.abs(Math.log(ratioOf(rate as Quantity, limit as Quantity)));
}

/** A finding of a label with the product's place, its name, and that of the plot where it is one of several. */
function ofProduct(
  finding: LabelFinding,
  at: string,
  names: { readonly product: string; readonly plot?: PlotName },
): Warning {
  const { path, message, figures } = finding;
  const { product, plot } = names;
  return {
    ...finding,
    message: `${product}${plot === undefined ? "" : ` on ${plotInEnglish(plot)}`}: ${message}`,
    path: path === "carrierRate" ? "calibration" : joinPath(at, path),
    figures: { ...figures, ...names },
  };
}

// One mark of a measure, or a step out of pace, moves a rate as much: common practice, no source.
const EVEN_PERCENT = 5;

/** A rate per ground or per length of row that one mix can't give to plots that are sprayed on different parts of their ground. */
function unevenWarnings(
  { name, rate }: Product,
  at: string,
  area: JobArea,
  names: readonly PlotName[],
): Warning[] {
  const [single] = rateUsed(rate, "");
  const size = sizesFor(single).find((one) => one === "ground" || one === "rowLength");
  if (size !== "ground" && size !== "rowLength") return [];
  const share = (one: Pick<PlotAreas, "treated" | "ground" | "rowLength">): number => {
    const measure = one[size] as { readonly value: number; readonly unit: Unit };
    return (
      inUnit(one.treated, "m2") / convertValue(measure.value, measure.unit, size === "ground" ? "m2" : "m")
    );
  };
  const usual = share(area);
  const off = area.plots.map((one) => 100 * (share(one) / usual - 1));
  const worst = off.reduce((a, b, i) => (Math.abs(b) > Math.abs(off[a] as number) ? i : a), 0);
  const percent = off[worst] as number;
  if (!moreThan(Math.abs(percent), EVEN_PERCENT)) return [];
  const isMore = percent > 0;
  const plot = names[worst] as PlotName;
  const figures = { product: name, percent: asPercent(Math.abs(percent)) };
  const uneven = warning(
    "rate-uneven",
    "warning",
    `${at}.rate`,
    (size === "ground"
      ? "{product}: the rate is per area of ground, and in one mix {plot} gets {percent} "
      : "{product}: the rate is per length of row, and in one mix {plot} gets {percent} ") +
      (isMore ? "too much. " : "too little. ") +
      "Plan the plots that differ separately.",
    { ...figures, plot: plotInEnglish(plot) },
    (size === "ground" ? "rate-uneven" : "rate-uneven-rows") + (isMore ? "-more" : "-less"),
  );
  return [{ ...uneven, figures: { ...figures, plot } }];
}

function ouncesWarnings(name: string, form: Product["form"], at: string): Warning[] {
  if (!/\b(oz|ounces?)\b/i.test(name)) return [];
  return [
    warning(
      "ounces-confusable",
      "note",
      `${at}.name`,
      form === "dry"
        ? "{product} has ounces in its name and is planned in ounces by weight, not fluid ounces. Check which one the label means."
        : "{product} has ounces in its name and is planned in fluid ounces, not ounces by weight. Check which one the label means.",
      { product: name },
      form === "dry" ? "ounces-confusable-dry" : "ounces-confusable-liquid",
    ),
  ];
}
