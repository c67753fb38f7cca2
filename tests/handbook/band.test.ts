import { stripRate } from "../../src/output-rate/index.ts";
import { bandsWidth } from "../../src/swath/index.ts";
import { qty, valueIn } from "../../src/units/index.ts";
import cases from "./cases.json" with { type: "json" };
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const PRINTED = 0.05;
const SLIPS: Readonly<Record<string, string>> = {
  band_uf_12in_18oz: "it prints 20.42 as 20.5",
};

const number = (one: HandbookCase, key: string): number => one.inputs[key]?.[0] as number;

/** The rate inside the band, from what one nozzle sprays over the course. */
function rateInBand(one: HandbookCase): number {
  const used = qty(number(one, "catch" in one.inputs ? "catch" : "catch_per_nozzle"), "fl_oz");
  const swath = bandsWidth({ bands: 1, bandWidth: qty(number(one, "band_width"), "in") }).treated;
  return valueIn(stripRate({ used, swath, distance: qty(number(one, "course"), "ft") }), "gal/ac");
}

topic("06_band", () => {
  for (const { id } of cases.filter((one) => one.topic === "06_band")) {
    const slip = SLIPS[id];
    if (slip === undefined) {
      agrees(id, (one) => [{ key: "rate_in_band", ours: rateInBand(one), within: PRINTED }]);
    } else {
      publicationErrs(id, slip, (one) => [
        {
          key: "rate_in_band",
          ours: rateInBand(one),
          // 43,560 ft² to the acre, 128 fl oz to the gallon, 12 in to the foot.
          right:
            (number(one, "catch_per_nozzle") * 43560 * 12) /
            (128 * number(one, "band_width") * number(one, "course")),
          within: PRINTED,
        },
      ]);
    }
  }
});
