import { describe, expect, it, vi } from "vitest";
import { TWO_PRODUCTS } from "../helpers/jobs.ts";

describe("under a Content-Security-Policy that allows no eval", () => {
  it("nothing tries to make code from text: not on import, not when a schema is made, not when it is used", async () => {
    const made: unknown[][] = [];
    // What a browser reports as a violation is the call, even where the error is caught.
    const watched = new Proxy(Function, {
      construct: (_, args) => {
        made.push(args);
        throw new EvalError("refused by policy");
      },
      apply: (_, __, args) => {
        made.push(args);
        throw new EvalError("refused by policy");
      },
    });
    vi.stubGlobal("Function", watched);
    vi.stubGlobal("eval", watched);
    try {
      const { parsePlanInput, planInputSchema, toJsonSchema } = await import("../../src/schema/index.ts");
      expect(parsePlanInput(TWO_PRODUCTS)).toEqual(TWO_PRODUCTS);
      expect(() => parsePlanInput({})).toThrow("Choose one of");
      expect(planInputSchema({ locale: "de" }).safeParse({}).success).toBe(false);
      expect(await planInputSchema().safeParseAsync(TWO_PRODUCTS)).toMatchObject({ success: true });
      toJsonSchema(planInputSchema());
      expect(made).toEqual([]);

      // The watch works: zod's other build tries at once.
      const z = await import("zod");
      z.object({});
      expect(made).not.toEqual([]);
    } finally {
      vi.unstubAllGlobals();
    }
  });
});
