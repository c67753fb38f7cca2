import { describe, it } from "vitest";
import { measureOut } from "../../../src/household/index.ts";
import { type Quantity, qty, type VolumeUnit } from "../../../src/units/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";

// Sizes out of all proportion used to run out of whole numbers, which is no error of this library's.
describe("a tool whose marks cannot be counted", () => {
  const measured = (tool: { graduation: Quantity<VolumeUnit>; least?: Quantity<VolumeUnit> }) => () =>
    measureOut({
      amount: qty(5, "mL"),
      tools: [{ name: "cylinder", capacity: qty(10, "mL"), ...tool }],
      rule: "never-over",
    });

  it("is refused at its graduation, or at its least", () => {
    expectRefused(measured({ graduation: qty(1e-75, "mL") }), "out-of-range", "tools[0].graduation");
    expectRefused(measured({ graduation: qty(1e-9, "mL") }), "out-of-range", "tools[0].graduation");
    expectRefused(
      measured({ graduation: qty(1e-4, "mL"), least: qty(1e75, "mL") }),
      "out-of-range",
      "tools[0].least",
    );
  });
});
