// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import {
  carrierFor,
  checkLabel,
  diluteMix,
  type LabelRate,
  mixingOrder,
  productAmount,
  productInLoads,
  splitLoads,
  strengthOf,
} from "../../src/tank-mix/index.ts";
import { qty, type Volume } from "../../src/units/index.ts";

const rate = qty(20, "gal/ac");
const area = { value: 1, unit: "ac", of: "treated" } as const;
const gallons = qty(10, "gal");

const total: Volume = carrierFor({ rate, area }).total;
// @ts-expect-error - ground area is not what spray lands on
carrierFor({ rate, area: { value: 1, unit: "ac", of: "ground" } });
// @ts-expect-error - an area that does not say what it is an area of
carrierFor({ rate, area: qty(1, "ac") });
// @ts-expect-error - per cent of what: a reserve names itself
carrierFor({ rate, area, reserve: 5 });

splitLoads({ total, tank: gallons, split: "equal" });
splitLoads({ total, tank: gallons, split: { pieces: 14 } });
// @ts-expect-error - how to part the mix is never guessed
splitLoads({ total, tank: gallons });
// @ts-expect-error - a weight is not a tank
splitLoads({ total, tank: qty(10, "lb"), split: "equal" });

const rates: LabelRate[] = [
  qty(2, "pt/ac"),
  qty(2, "oz/1000ft2"),
  qty(2, "lb/100gal"),
  qty(2, "mL/m"),
  { value: 1, unit: "%", basis: "v/v" },
  { parts: 1, to: 100, of: "water" },
  { rate: qty(2, "pt/ac"), per: "ground" },
  { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal") },
  { low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(2, "pt/ac") },
];
void rates;
// @ts-expect-error - per cent of what
const bare: LabelRate = qty(1, "%");
// @ts-expect-error - 1:100 of what
const ratio: LabelRate = { parts: 1, to: 100 };
// @ts-expect-error - a volume of product is not a rate
const amount: LabelRate = qty(2, "pt");
// @ts-expect-error - active ingredient is a weight
const volume: LabelRate = { activeIngredient: qty(1, "pt/ac"), contains: qty(4, "lb/gal") };
// @ts-expect-error - a range says which rate is used
const open: LabelRate = { low: qty(1, "pt/ac"), high: qty(2, "pt/ac") };
void [bare, ratio, amount, volume, open];

// @ts-expect-error - liquid or dry is never guessed
productAmount({ rate: qty(2, "pt/ac"), carrier: gallons });

// What a product is measured in stays what it is.
const loads = splitLoads({ total, tank: gallons, split: "equal" }).loads;
const liquid: Volume = productInLoads({ amount: qty(5, "fl_oz"), loads }).total;
// @ts-expect-error
const dry: Volume = productInLoads({ amount: qty(5, "oz"), loads }).total;
void [liquid, dry];

const lacking: Volume | undefined = strengthOf({
  mix: gallons,
  addedWater: gallons,
  product: qty(6, "fl_oz"),
}).lacking;
void lacking;

// @ts-expect-error - a bare per cent is not a strength
diluteMix({ from: qty(10, "%"), to: qty(1, "%"), volume: gallons });
// @ts-expect-error - GR is not mixed into water
mixingOrder({ products: [{ code: "GR" }] });
// @ts-expect-error - the least carrier is a volume per area
checkLabel({ rate, form: "liquid", carrierRate: rate, label: { leastCarrier: gallons } });
