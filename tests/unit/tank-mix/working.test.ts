import { describe, expect, it } from "vitest";
import {
  activeIngredientRate,
  type CarrierInput,
  carrierFor,
  checkInjector,
  concentrateSpray,
  diluteMix,
  injectedStrength,
  injectorStock,
  jarTest,
  type LabelRate,
  type LoadsInput,
  leftoverArea,
  mixLoads,
  productAmount,
  productRate,
  rinseTank,
  splitLoads,
  stockFor,
  strengthOf,
} from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import type { WorkingLine } from "../../../src/units/working-line.ts";
import {
  activeIngredientRate as activeIngredientRateLines,
  carrierFor as carrierForLines,
  checkInjector as checkInjectorLines,
  concentrateSpray as concentrateSprayLines,
  diluteMix as diluteMixLines,
  injectedStrength as injectedStrengthLines,
  injectorStock as injectorStockLines,
  jarTest as jarTestLines,
  leftoverArea as leftoverAreaLines,
  loadWater,
  productAmount as productAmountLines,
  productInLoads,
  productRate as productRateLines,
  rinseTank as rinseTankLines,
  splitLoads as splitLoadsLines,
  stockFor as stockForLines,
  strengthOf as strengthOfLines,
} from "../../../src/working/index.ts";
import { TANK_MIX_WORDS } from "../../../src/worksheet/words/tank-mix.ts";
import { expectLinesFrom, expectLinesTrue } from "../../helpers/working.ts";

const area = { value: 1.7, unit: "ha", of: "treated" } as const;
const ground = { value: 3.1, unit: "ac", of: "ground" } as const;

/** Lines that are true, end in the function's own result, and have words for every name in them. */
function expectWorking(lines: readonly WorkingLine[], result: unknown, input?: unknown): void {
  expectLinesTrue(lines);
  if (input !== undefined) expectLinesFrom(lines, input);
  expect(lines.at(-1)?.result).toEqual(result);
  for (const line of lines) {
    if (line.about !== undefined) {
      const [term] = line.about.split(".").slice(-1);
      const id = line.about.slice(0, -1 - (term ?? "").length);
      const named = TANK_MIX_WORDS[line.about] !== undefined || wordFor(id, term ?? "") !== undefined;
      expect(named, `words for ${line.about}`).toBe(true);
      continue;
    }
    expect(TANK_MIX_WORDS[line.id]?.found, `words for ${line.id}`).toBeTruthy();
    for (const symbol of Object.keys(line.terms)) {
      expect(wordFor(line.id, symbol), `words for ${symbol} of ${line.id}`).toBeTruthy();
      expect(line.formula).toMatch(new RegExp(`\\b${symbol}\\b`));
    }
  }
}

// What is not given is none.
const NONE = [qty(0, "gal"), qty(0, "imp_gal"), qty(0, "L")];

/** What a per cent is by definition, which the lines take for known: the size of a whole, and weight in volume. */
function byDefinition(given: unknown): unknown {
  const sizes = [qty(128, "fl_oz/gal"), qty(3785.411784 / 28.349523125, "oz/gal")];
  const found = JSON.stringify(given).match(/"value":([\d.]+),"unit":"(%|ppm)","basis":"w\/v"/);
  if (found === null) return sizes;
  return [...sizes, qty(Number(found[1]) / (found[2] === "%" ? 100 : 1e6), "kg/L")];
}

function wordFor(id: string, symbol: string): string | undefined {
  const terms = TANK_MIX_WORDS[id]?.terms;
  return terms?.[symbol] ?? terms?.[symbol.replace(/\d+$/, "")];
}

describe("the working of tank-mix, put into an evaluator that is not ours", () => {
  it.each<[string, Partial<CarrierInput>]>([
    ["without a reserve", {}],
    ["with a reserve in per cent", { reserve: { percent: 7.5 }, lineVolume: qty(31, "fl_oz") }],
    ["with a reserve as a volume", { reserve: { volume: qty(3, "pt") } }],
    ["rounded up", { reserve: { roundUpTo: qty(3, "qt") }, lineVolume: qty(31, "fl_oz") }],
    ["rounded up to what it is already", { reserve: { roundUpTo: qty(1, "pt") } }],
  ])("is true for carrierFor %s", (_, change) => {
    const input: CarrierInput = { rate: qty(37, "fl_oz/1000ft2"), area, ...change };
    expectWorking(carrierForLines(input), carrierFor(input).total, [input, NONE]);
  });

  it.each<[string, Partial<LoadsInput>]>([
    ["by the tank", { split: "full-then-part" }],
    ["equal, to a working fill", { split: "equal", workingFill: qty(3.3, "gal") }],
    ["a hair over", { split: "equal", total: qty(8.000000000000002, "gal"), tank: qty(4, "gal") }],
    ["by whole rows", { split: { pieces: 14 } }],
    [
      "by whole rows with lines and reserve",
      { split: { pieces: 14, lines: qty(1, "qt"), reserve: qty(3, "pt") }, total: qty(40, "qt") },
    ],
    ["all rows in one load", { split: { pieces: 3 }, total: qty(1, "gal") }],
  ])("is true for splitLoads %s", (_, change) => {
    const input = { total: qty(17, "gal"), tank: qty(15, "L"), split: "equal", ...change } as LoadsInput;
    const lines = splitLoadsLines(input);
    expectWorking(lines, splitLoads(input).count, [input, NONE]);
    const isByRows = lines.some(({ id }) => id === "tank-mix.piece");
    expect(isByRows).toBe(typeof input.split === "object");
  });

  const percent = { value: 0.75, unit: "%" } as const;
  it.each<[string, LabelRate, "liquid" | "dry"]>([
    ["per treated area", qty(1.3, "pt/ac"), "liquid"],
    ["per ground area", { rate: qty(700, "g/ha"), per: "ground" }, "dry"],
    ["per row length", qty(3, "mL/m"), "liquid"],
    ["per volume of carrier", qty(3, "lb/100gal"), "dry"],
    ["per volume of carrier, as given", qty(3, "fl_oz/gal"), "liquid"],
    ["in per cent by volume", { ...percent, basis: "v/v" }, "liquid"],
    ["in per cent by weight in volume", { ...percent, basis: "w/v" }, "dry"],
    ["as a ratio to the water", { parts: 1, to: 64, of: "water" }, "liquid"],
    ["as a ratio of the mix", { parts: 1, to: 64, of: "mix" }, "liquid"],
    [
      "as a liquid's active ingredient",
      { activeIngredient: qty(0.4, "lb/ac"), contains: qty(360, "g/L") },
      "liquid",
    ],
    [
      "as active ingredient by weight of a liquid",
      {
        activeIngredient: { value: 300, unit: "ppm", basis: "w/v" },
        contains: { value: 22, unit: "%", basis: "w/w" },
        density: qty(1.1, "kg/L"),
      },
      "liquid",
    ],
    [
      "as a dry product's active ingredient on ground area",
      { activeIngredient: { rate: qty(0.4, "lb/ac"), per: "ground" }, contains: qty(750, "g/kg") },
      "dry",
    ],
    ["in a range", { low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(1.1, "pt/ac") }, "liquid"],
  ])("is true for productAmount %s", (_, rate, form) => {
    const input = {
      rate,
      form,
      carrier: qty(13, "gal"),
      carrierRate: qty(240, "L/ha"),
      area,
      ground,
      rowLength: qty(900, "ft"),
    };
    expectWorking(productAmountLines(input), productAmount(input).amount, [input, byDefinition(rate)]);
  });

  it("is true for active ingredient, both ways", () => {
    const contents = [
      { contains: qty(360, "g/L"), form: "liquid" },
      { contains: { value: 36, unit: "%", basis: "w/v" }, form: "liquid" },
      { contains: { value: 36, unit: "%", basis: "w/w" }, density: qty(9, "lb/gal"), form: "liquid" },
      { contains: qty(750, "g/kg"), form: "dry" },
    ] as const;
    for (const content of contents) {
      const input = { activeIngredient: qty(0.7, "lb/ac"), ...content };
      expectWorking(productRateLines(input), productRate(input), [input, byDefinition(content)]);
      const { form, ...known } = content;
      const product = form === "liquid" ? qty(3, "pt/ac") : qty(300, "g/ha");
      expectWorking(
        activeIngredientRateLines({ product, ...known }),
        activeIngredientRate({ product, ...known }),
        [product, content, byDefinition(content)],
      );
    }
  });

  it("is true for products in loads, and their water", () => {
    const loads = [{ carrier: qty(4, "gal") }, { carrier: qty(9, "qt") }];
    const amount = qty(11, "fl_oz");
    const lines = productInLoads({ amount, loads });
    expect(lines).toHaveLength(2);
    expectWorking(lines, { value: (11 * 2.25) / 6.25, unit: "fl_oz" });
    const [, second] = mixLoads({ loads, amounts: [amount, qty(3, "oz"), qty(200, "mL")] }).loads;
    if (second === undefined) throw new Error("two loads were given");
    expectWorking(loadWater(second), second.water);
  });

  it("is true for the small mixes", () => {
    const jar = { jar: qty(1, "pt"), mix: qty(300, "L"), amounts: [qty(1, "kg"), qty(3, "pt")] };
    expectWorking(jarTestLines(jar), jarTest(jar).amounts[1], jar);
    const percents = {
      from: { ...percent, basis: "w/v" },
      to: { value: 20, unit: "ppm", basis: "w/v" },
    } as const;
    expectWorking(
      diluteMixLines({ ...percents, volume: qty(3, "pt") }),
      diluteMix({ ...percents, volume: qty(3, "pt") }).water,
      [percents, qty(3, "pt")],
    );
    const stock = { amount: qty(10, "mL"), volume: qty(1, "qt"), dose: qty(0.1, "tsp") };
    expectWorking(stockForLines(stock), stockFor(stock), stock);
    const rinses = { residual: qty(3, "pt"), water: qty(7, "L"), rinses: 3 };
    expectWorking(rinseTankLines(rinses), rinseTank(rinses).strength, rinses);
    const weak = { mix: qty(3, "gal"), addedWater: qty(2, "L"), product: qty(5, "oz") };
    expectWorking(strengthOfLines(weak), strengthOf(weak).weakBy, weak);
    expect(strengthOfLines(weak).find((line) => line.id === "tank-mix.lacking")?.result).toEqual(
      strengthOf(weak).lacking,
    );
    const { product, ...unknown } = weak;
    expect(strengthOfLines(unknown)).toEqual(
      strengthOfLines(weak).filter((line) => line.id !== "tank-mix.lacking"),
    );
    const { value, unit } = leftoverArea({ volume: qty(2, "L"), rate: qty(31, "gal/ac") });
    const leftover = { volume: qty(2, "L"), rate: qty(31, "gal/ac") };
    expectWorking(leftoverAreaLines(leftover), { value, unit }, leftover);
  });

  it("is true for concentrate sprays", () => {
    const dilute = qty(300, "gal/ac");
    const byRate = { dilute, concentrate: qty(700, "L/ha") };
    expectWorking(concentrateSprayLines(byRate), concentrateSpray(byRate).factor, byRate);
    const byFactor = { dilute, factor: 3 };
    expectWorking(concentrateSprayLines(byFactor), concentrateSpray(byFactor).concentrate, byFactor);
    for (const rate of [
      qty(8, "fl_oz/100gal"),
      qty(1.5, "pt/ac"),
      { parts: 1, to: 400, of: "mix" } as const,
    ]) {
      const input = { ...byFactor, product: { rate, form: "liquid" } } as const;
      const one = qty(1, "gal");
      expectWorking(concentrateSprayLines(input), concentrateSpray(input).strength, [
        input,
        one,
        byDefinition(input),
      ]);
    }
  });

  it("is true for injectors", () => {
    const ratio = { parts: 1, to: 100, of: "water" } as const;
    const run = { rate: qty(3, "lb/100gal"), form: "dry", ratio } as const;
    for (const size of [{ finished: qty(500, "L") }, { stock: qty(9, "qt") }]) {
      const input = { ...run, ...size } as Parameters<typeof injectorStock>[0];
      expectWorking(injectorStockLines(input), injectorStock(input).strength, input);
      const off = { ...input, errorPercent: 5 };
      expectWorking(injectorStockLines(off), injectorStock(off).range?.high, off);
      const kinds = ["injectorFinished", "injectorStock"].filter((id) =>
        injectorStockLines(input).some((line) => line.id === `tank-mix.${id}`),
      );
      expect(kinds).toEqual(["finished" in size ? "injectorStock" : "injectorFinished"]);
    }
    const stock = { stock: qty(20, "g/L"), ratio };
    expectWorking(injectedStrengthLines(stock), injectedStrength(stock).finished, stock);
    const off = { ...stock, errorPercent: 5 };
    expectWorking(injectedStrengthLines(off), injectedStrength(off).range?.high, off);
    for (const of of ["mix", "water"] as const) {
      const input = { ratio: { ...ratio, of }, drawn: qty(5, "fl_oz"), caught: qty(15, "L") };
      const lines = checkInjectorLines(input);
      expectWorking(lines, checkInjector(input).strengthOff, input);
      expect(lines.find((line) => line.id === "tank-mix.injectorRatio")?.result).toBe(
        checkInjector(input).ratio.to,
      );
    }
  });
});
