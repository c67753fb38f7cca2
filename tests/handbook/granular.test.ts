import { stripRate } from "../../src/output-rate/index.ts";
import { convert, qty, scaleQuantity } from "../../src/units/index.ts";
import { agrees, publicationErrs, topic } from "./harness.ts";

topic("10_granular", () => {
  publicationErrs(
    "gran_uf_wheel",
    "43 turns × 1,000 stands for 43,560, and 277.8 is cut to 277: the rate is 281.4 lb/ac",
    (one) => {
      const travelled = scaleQuantity(
        qty(Number(one.inputs.circumference?.[0]), "ft"),
        Number(one.inputs.revolutions?.[0]),
      );
      const rate = stripRate({
        used: qty(20, "lb"),
        swath: qty(Number(one.inputs.width?.[0]), "ft"),
        distance: travelled,
      });
      const right = (20 * 43_560) / (43 * 9 * 8);
      return [
        { key: "rate", ours: rate.value, within: 0.5, right },
        { key: "ai_20pct", ours: scaleQuantity(rate, 0.2).value, within: 0.05, right: 0.2 * right },
      ];
    },
  );

  agrees("gran_pes_band_in", (one) => [
    { key: "band_ft", ours: convert(qty(Number(one.inputs.band?.[0]), "in"), "ft").value, within: 0.0005 },
  ]);
});
