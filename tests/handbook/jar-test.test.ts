import { expect } from "vitest";
import { jarTest, type MixingStep, mixingOrder } from "../../src/tank-mix/index.ts";
import { qty, valueIn } from "../../src/units/index.ts";
import { rule, topic } from "./harness.ts";

topic("11_jar_test", () => {
  rule(
    "jar_utah",
    "15 minutes' standing is the default; its order is given as steps, since it has soluble solids after liquids; its fixed spoons are not taken, since they test another mix",
    (one) => {
      const jar = jarTest({
        jar: qty(one.inputs.water?.[0] as number, "pt"),
        mix: qty(100, "gal"),
        amounts: [qty(1, "qt")],
      });
      expect(jar.stand).toEqual(qty(one.expected.stand?.[0] as number, "min"));
      // A quart in 100 gal is a quarter of a teaspoon in a pint; the fixed teaspoon is four times the mix that is sprayed.
      const spoon = valueIn(jar.amounts[0] as never, "tsp" as never);
      expect(spoon).toBeCloseTo(192 / 800, 12);
      expect(1 / spoon).toBeGreaterThan(4);
      // The order of the list: pouch, wettable powder, dry flowable, capsule suspension, emulsifiable concentrate, soluble
      // liquid, soluble powder, adjuvant, fertilizer.
      const steps: MixingStep[] = [
        "soluble-bag",
        "wettable-powder",
        "dry-flowable",
        "suspension",
        "emulsion",
        "soluble-liquid",
        "soluble-solid",
        "adjuvant",
        "fertilizer",
      ];
      const order = mixingOrder({
        steps,
        products: [
          { code: "fertilizer" },
          { code: "adjuvant" },
          { code: "SP" },
          { code: "SL" },
          { code: "EC" },
          { code: "CS" },
          { code: "WG" },
          { code: "WP" },
          { code: "WP", inSolubleBag: true },
        ],
      });
      expect(order.map((turn) => turn.product)).toEqual([8, 7, 6, 5, 4, 3, 2, 1, 0]);
      expect(order.map((turn) => turn.step)).toEqual(steps);
    },
  );

  rule("jar_arizona", "another standing time and a jar half full of mix are parameters", (one) => {
    const jar = jarTest({
      jar: qty(one.inputs.carrier?.[0] as number, "pt"),
      mix: qty(50, "gal"),
      amounts: [qty(32, "fl_oz"), qty(20, "oz")],
      stand: qty(one.expected.stand?.[0] as number, "min"),
    });
    expect(jar.stand).toEqual(qty(5, "min"));
    // 50 gal are 400 pt.
    expect(jar.amounts).toEqual([qty(32 / 400, "fl_oz"), qty(20 / 400, "oz")]);
    expect(jar.water.value).toBeCloseTo(16 - 32 / 400, 12);
  });
});
