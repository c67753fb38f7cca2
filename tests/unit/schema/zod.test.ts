import { describe, expect, it } from "vitest";
import * as z from "zod";
import * as mini from "zod/mini";
import { parsePlanInput, planInputSchema, plotSchema, productSchema } from "../../../src/schema/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { asText, PLOTS } from "../../helpers/plan-inputs.ts";

describe("the schemas in an app's own zod", () => {
  it.each([
    ["zod", z.object({ customer: z.string(), job: planInputSchema() })],
    ["zod/mini", mini.object({ customer: mini.string(), job: planInputSchema() })],
  ])("compose with %s, with the library's messages at the place of each fault", (_, order) => {
    expect(order.parse({ customer: "Example Farm", job: asText(TWO_PRODUCTS) })).toEqual({
      customer: "Example Farm",
      job: TWO_PRODUCTS,
    });
    const read = order.safeParse({
      customer: "Example Farm",
      job: { ...TWO_PRODUCTS, sprayer: { tank: "4 ft" } },
    });
    expect(read.error?.issues).toEqual([
      {
        code: "custom",
        path: ["job", "sprayer", "tank"],
        message: "4 ft is a length. Enter a volume, such as 5 gal.",
        params: {
          code: "wrong-dimension",
          key: "dimension",
          figures: expect.objectContaining({ given: { value: 4, unit: "ft" } }),
        },
      },
    ]);
  });

  it("speak the common language of form libraries (Standard Schema), at once and later", async () => {
    const good = await planInputSchema()["~standard"].validate(TWO_PRODUCTS);
    expect(good).toEqual({ value: TWO_PRODUCTS });
    const bad = await planInputSchema()["~standard"].validate({ ...TWO_PRODUCTS, tools: "x" });
    expect(bad.issues?.map(({ path }) => path)).toEqual([["tools"]]);
    expect(await planInputSchema().safeParseAsync(TWO_PRODUCTS)).toEqual({
      success: true,
      data: TWO_PRODUCTS,
    });
  });

  it("give the same where a batch has them compiled", () => {
    const plot = mini.compile(plotSchema(), { strict: true });
    const job = mini.compile(planInputSchema(), { strict: true });
    const product = mini.compile(productSchema(), { strict: true });
    for (const one of PLOTS) expect(plot.parse(asText(one))).toEqual(one);
    expect(job.parse(asText(TWO_PRODUCTS))).toEqual(TWO_PRODUCTS);
    expect(job.parse({ ...TWO_PRODUCTS, extra: undefined })).toEqual(TWO_PRODUCTS);
    const wrong = { ...TWO_PRODUCTS.products[0], rate: "1 lb/ac", lable: {} };
    for (const read of [product.safeParse(wrong), productSchema().safeParse(wrong)]) {
      expect(read.error?.issues.map(({ path }) => path)).toEqual([["lable"], ["rate"]]);
    }
  });

  it("leave zod's global settings as they are", () => {
    parsePlanInput(TWO_PRODUCTS);
    expect(z.config().jitless).toBeUndefined();
    expect(z.config().customError).toBeUndefined();
  });
});
