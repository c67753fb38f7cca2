import { flowFrom } from "../../src/output-rate/index.ts";
import { injectorStock, productAmount } from "../../src/tank-mix/index.ts";
import { qty, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);

const list = (one: HandbookCase, key: string): readonly number[] =>
  [one.inputs[key]?.[0] ?? []].flat().map(Number);

/** A finished ppm, weight in volume, of what a fertilizer contains by weight. */
const rateOf = (ppm: number, percent: number) =>
  ({
    activeIngredient: { value: ppm, unit: "ppm", basis: "w/v" },
    contains: { value: percent, unit: "%", basis: "w/w" },
  }) as const;

/** Ounces of fertilizer for a volume at a ppm, and what plain arithmetic gives with pounds of 0.45359237 kg and gallons of 231 in³. */
function ounces(one: HandbookCase) {
  const [ppm, percent, gallons] = ["strength", "content", "volume"].map((key) => number(one, key));
  const rate = rateOf(ppm as number, percent as number);
  const { amount } = productAmount({ rate, form: "dry", carrier: qty(gallons as number, "gal") });
  const grams = ((ppm as number) * (gallons as number) * 3.785411784) / 1000 / ((percent as number) / 100);
  return { ours: amount.value, right: grams / 28.349523125 };
}

topic("14_injector", () => {
  for (const ppm of [50, 100, 200])
    agrees(`inj_hummert_${ppm}`, (one) =>
      list(one, "ratios").map((to) => {
        const { strength } = injectorStock({
          rate: rateOf(number(one, "strength"), number(one, "content")),
          form: "dry",
          ratio: { parts: 1, to, of: "mix" },
          stock: qty(1, "gal"),
        });
        // The chart's own steps: half ounces in a gallon from 4 on, and quarter ounces at 50 ppm.
        const within = to === 15 ? (ppm === 50 ? 0.025 : 0.05) : ppm === 50 && to === 100 ? 0.25 : 0.5;
        return { key: `r${to}`, ours: strength.value, within };
      }),
    );

  for (const [content, within] of [
    [20, 0.25],
    [15, 0.5],
  ] as const)
    agrees(`inj_umass_${content}`, (one) => [{ key: "product", ours: ounces(one).ours, within }]);
  for (const ppm of [250, 150])
    agrees(`inj_tamu_cn${ppm}`, (one) => [{ key: "product", ours: ounces(one).ours, within: 0.5 }]);
  for (const id of ["trade_tamu_150an", "trade_tamu_200an"])
    publicationErrs(
      id,
      "0.33 × 75 is 24.75, not the 29.75 of the page, so the ounces are a sixth too few",
      (one) => [{ key: "product", within: 0.5, ...ounces(one) }],
    );
  agrees("trade_tamu_1oz", (one) => {
    const { amount } = productAmount({
      rate: rateOf(100, number(one, "content")),
      form: "dry",
      carrier: qty(number(one, "volume"), "gal"),
    });
    // 75 for 74.9: the page's rule.
    return [{ key: "ppm", ours: (100 * number(one, "product")) / amount.value, within: 0.05 }];
  });

  const plain = { rate: qty(1, "mL/L"), form: "liquid" } as const;
  agrees("inj_umass_of_mix", (one) => {
    const ratio = { parts: 1, to: number(one, "ratio"), of: "mix" } as const;
    const { finished } = injectorStock({ ...plain, ratio, stock: qty(number(one, "stock"), "gal") });
    return [{ key: "finished", ours: finished.value, within: 0.5 }];
  });
  agrees("inj_umd_of_mix", (one) => {
    const ratio = { parts: 1, to: number(one, "ratio"), of: "mix" } as const;
    const { stock, finished } = injectorStock({
      ...plain,
      ratio,
      finished: qty(number(one, "finished"), "L"),
    });
    return [
      { key: "stock", ours: stock.value, within: 0.05 },
      { key: "water", ours: finished.value - stock.value, within: 0.5 },
    ];
  });

  agrees("trade_gpn_5ppm", (one) => {
    const rate = qty(number(one, "strength"), "mL/gal");
    const { amount } = productAmount({ rate, form: "liquid", carrier: qty(number(one, "volume"), "gal") });
    return [{ key: "product", ours: valueIn(amount as never, "L" as never), within: 0.005 }];
  });
  agrees("inj_gpn_3500", (one) => {
    const rate = qty((number(one, "strength") * number(one, "ppm")) / 1000, "mL/gal");
    const { amount } = productAmount({ rate, form: "liquid", carrier: qty(number(one, "volume"), "gal") });
    return [{ key: "product", ours: valueIn(amount as never, "L" as never), within: 0.0005 }];
  });
  // What an injection pump must give in the hours that the water runs.
  agrees("trade_wsu_inject", (one) => {
    const flow = flowFrom({ caught: qty(number(one, "volume"), "gal"), time: qty(number(one, "time"), "h") });
    return [{ key: "flow", ours: valueIn(flow, "gal/h"), within: 0.05 }];
  });
});
