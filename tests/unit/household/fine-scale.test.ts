import { describe, expect, it } from "vitest";
import {
  type MeasuringTool,
  measureOut,
  suggestMeasures,
  type Tools,
  toolSet,
} from "../../../src/household/index.ts";
import { planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { QUIET } from "../../helpers/jobs.ts";

const asked = (grams: number, tools: Tools = "scales") =>
  ({ amount: qty(grams, "g"), tools, rule: "never-over" }) as const;

describe("a weight that is too small for the scale", () => {
  it("is offered a finer scale, in words and as a tool to have", () => {
    const input = asked(1.23);
    expect(measureOut(input)).toMatchObject({
      ok: false,
      issue: {
        key: "weight-too-small",
        message:
          "1.23 g is too small to weigh with these tools: the least they weigh is 2 g. Use a scale that reads 0.01 g.",
        figures: { amount: qty(1.23, "g"), least: qty(2, "g"), marks: qty(0.01, "g") },
      },
    });
    // A load 1.6 times as large takes 2 g.
    const [batch, tool] = suggestMeasures(input);
    expect(batch).toMatchObject({ kind: "batch", amount: qty(2, "g") });
    expect(tool).toMatchObject({ kind: "tool", tool: { name: "0.01 g scale" } });
  });

  it("is offered the coarsest scale that weighs it", () => {
    // 1.19 oz are 33.7 g, under the 2 oz of scales in ounces.
    const dose = measureOut({ amount: qty(1.19, "oz"), tools: "us-scales", rule: "never-over" });
    expect(dose).toMatchObject({ ok: false, issue: { figures: { marks: qty(0.1, "g") } } });
  });

  it("is offered one by its weight in any unit, down to what that weighs", () => {
    const key = (amount: object, tools: Tools) => {
      const dose = measureOut({ amount, tools, rule: "never-over" } as never);
      return dose.ok ? undefined : dose.issue.key;
    };
    expect(key(qty(0.05, "oz"), "us-scales")).toBe("weight-too-small");
    expect(key(qty(0.2, "g"), "scales")).toBe("weight-too-small");
    expect(key(qty(0.19, "g"), "scales")).toBe("amount-too-small");
    expect(key(qty(0.19, "g"), "fine-scales")).toBe("amount-too-small");
    expect(key(qty(0.01, "mL"), "syringes")).toBe("amount-too-small");
  });

  it("is weighed by the finer one to a hundredth of a gram, never over", () => {
    expect(measureOut(asked(1.239, "fine-scales"))).toMatchObject({ ok: true, measured: qty(1.23, "g") });
    const both: MeasuringTool[] = [...toolSet("scales"), ...toolSet("fine-scales")];
    expect(measureOut(asked(1.239, both))).toMatchObject({ ok: true, measured: qty(1.23, "g") });
  });
});

describe("a plan without a scale", () => {
  // 5,400 sq ft at 20 gal/ac are 2.48 gal, one load of a tank of that size.
  const plan = (ouncesPerAcre: number) =>
    planApplication({
      ...QUIET,
      sprayer: { tank: qty(2.48, "gal") },
      products: [{ name: "Product A", form: "dry", rate: qty(ouncesPerAcre, "oz/ac") }],
    });
  const scaleOf = (ouncesPerAcre: number) => {
    const measured = plan(ouncesPerAcre).loads[0]?.products[0]?.measured;
    return measured?.ok ? measured.parts[0]?.tool.name : measured?.issue.key;
  };

  it("takes an ordinary scale, and a finer one for less than that weighs", () => {
    // 28.349523125 g an ounce: 0.57 oz/ac are 2.003 g on 5,400 sq ft, 0.56 are 1.968 g.
    expect(scaleOf(12)).toBe("200 g scale");
    expect(scaleOf(0.57)).toBe("200 g scale");
    expect(scaleOf(0.56)).toBe("0.01 g scale");
    expect(scaleOf(0.01)).toBe("amount-too-small-other");
    expect(plan(0.56).warnings.map(({ code }) => code)).toEqual(["scale-needed"]);
  });
});
