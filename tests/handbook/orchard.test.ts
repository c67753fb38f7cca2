import { groundArea, plantCount } from "../../src/area/index.ts";
import { diluteRate, ratePerPlant, treeRowVolume } from "../../src/output-rate/index.ts";
import { concentrateSpray, productAmount } from "../../src/tank-mix/index.ts";
import { qty, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const list = (one: HandbookCase, key: string): readonly number[] =>
  [one.inputs[key]?.[0] ?? []].flat().map(Number);
const feet = (one: HandbookCase, key: string) => qty(number(one, key), "ft");
const canopy = (one: HandbookCase) => ({
  height: feet(one, "height"),
  width: feet(one, "width"),
  rowSpacing: feet(one, "row"),
});

topic("13_orchard", () => {
  agrees("trade_landers_trv", (one) => [
    { key: "volume", ours: treeRowVolume(canopy(one)).value, within: 0.5 },
  ]);
  agrees("trade_landers_max", (one) => [
    {
      key: "rate",
      ours: diluteRate({
        canopy: qty(number(one, "volume"), "ft3/ac"),
        spray: qty(number(one, "cover"), "gal/1000ft3"),
      }).value,
      within: 0.5,
    },
  ]);
  agrees("orch_landers_min", (one) => [
    {
      key: "rate",
      ours: diluteRate({ canopy: canopy(one), spray: qty(number(one, "cover"), "gal/1000ft3") }).value,
      within: 0.5,
    },
  ]);
  agrees("orch_psu_standard", (one) => {
    const thousands = valueIn(treeRowVolume(canopy(one)), "1000ft3/ac");
    return [{ key: "cover", ours: number(one, "rate") / thousands, within: 0.05 }];
  });
  // Gallons an acre for each foot of width × height / spacing are gallons for 43,560 ft³.
  agrees("orch_zondag", (one) => [
    {
      key: "rate",
      ours: diluteRate({
        canopy: canopy(one),
        spray: qty(number(one, "factor") / 43.56, "gal/1000ft3"),
      }).value,
      within: 0.5,
    },
  ]);

  const thinned = (one: HandbookCase) => {
    const { concentrate } = concentrateSpray({
      dilute: qty(number(one, "dilute"), "gal/ac"),
      factor: number(one, "factor"),
    });
    return [{ key: "rate", ours: concentrate.value, within: 0.5, right: 400 / number(one, "factor") }];
  };
  for (const times of [2, 3, 4]) agrees(`orch_goodfruit_${times}x`, thinned);
  publicationErrs(
    "orch_goodfruit_6x",
    "400 gallons at six times the strength are 67 gallons, not 76",
    thinned,
  );

  const perHectare = (one: HandbookCase) =>
    list(one, "trees").map((tree) => ({
      key: `t${tree}`,
      ours: plantCount({
        ground: groundArea(qty(1, "ha")),
        rowSpacing: qty(number(one, "row"), "m"),
        plantSpacing: qty(tree, "m"),
      }),
      within: 0.5,
      right: 10_000 / (number(one, "row") * tree),
    }));
  for (const row of [3, 4, 4.5, 5, 6]) agrees(`orch_spacing_${row}m`, perHectare);
  publicationErrs("orch_kvk_coconut", "10,000 / 7.5² is 178, printed as 175", perHectare);
  publicationErrs("orch_spacing_3.5m", "10,000 / (3.5 × 2) is 1,429, not 1,426", perHectare);

  agrees("orch_psu_trees", (one) => {
    const spacings = { rowSpacing: feet(one, "row"), plantSpacing: feet(one, "tree") };
    return [
      { key: "trees", ours: plantCount({ ground: groundArea(qty(1, "ac")), ...spacings }), within: 0.5 },
      {
        key: "per_tree",
        ours: ratePerPlant({ rate: qty(number(one, "rate"), "gal/ac"), ...spacings }).value,
        within: 0.005,
      },
    ];
  });
  agrees("trade_psu_per_tree", (one) => [
    {
      key: "per_tree",
      ours: ratePerPlant({
        rate: qty(number(one, "rate"), "gal/ac"),
        plants: number(one, "trees_per_acre"),
        ground: groundArea(qty(1, "ac")),
      }).value,
      within: 0.005,
    },
  ]);
  agrees("orch_onfruit_kg", (one) => {
    const rate = qty(number(one, "rate") / 500, "kg/L");
    const { amount } = productAmount({ rate, form: "dry", carrier: qty(number(one, "volume"), "L") });
    return [{ key: "product", ours: valueIn(amount as never, "kg" as never), within: 0.05 }];
  });
  agrees("orch_onfruit_vv", (one) => {
    const rate = { value: number(one, "rate"), unit: "%", basis: "v/v" } as const;
    const { amount } = productAmount({ rate, form: "liquid", carrier: qty(number(one, "volume"), "L") });
    return [{ key: "product", ours: valueIn(amount as never, "L" as never), within: 0.05 }];
  });
});
