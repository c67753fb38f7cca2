import { activeIngredientRate, productAmount, productRate } from "../../src/tank-mix/index.ts";
import { type Mass, qty, valueIn } from "../../src/units/index.ts";
import { agrees, publicationErrs, topic } from "./harness.ts";

topic("17_active_ingredient", () => {
  agrees("trade_upm_dry", () => {
    const active = activeIngredientRate({ product: qty(2.5, "kg/ha"), contains: qty(300, "g/kg") });
    return [{ key: "ai", ours: valueIn(active as never, "g/ha" as never), within: 0.5 }];
  });

  agrees("trade_iari_3g", () => {
    const contains = { value: 3, unit: "%", basis: "w/w" } as const;
    const product = productRate({ activeIngredient: qty(450, "g/ha"), contains, form: "dry" });
    return [{ key: "product", ours: valueIn(product as never, "kg/ha" as never), within: 0.005 }];
  });

  publicationErrs("trade_who_75wp", "66.67 g is cut to 66.6", () => {
    const inTank = (liters: number): number => {
      const { amount } = productAmount({
        rate: {
          activeIngredient: qty(2, "g/m2"),
          contains: { value: 75, unit: "%", basis: "w/w" },
        },
        form: "dry",
        carrier: qty(liters, "L"),
        carrierRate: qty(40, "mL/m2"),
      });
      return valueIn(amount as Mass, "g");
    };
    // 2 g/m² of active ingredient is 2/0.75 g/m² of product, in 0.040 L of mix.
    return [
      { key: "per_L", ours: inTank(1), within: 0.05, right: 2 / 0.75 / 0.04 },
      { key: "tank", ours: inTank(8), within: 0.05, right: (8 * 2) / 0.75 / 0.04 },
    ];
  });
});
