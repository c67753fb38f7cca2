import { describe, expect, it } from "vitest";
import { practiceProblem, practiceSet, practiceSheet, problemFrom } from "../../../src/practice/index.ts";
import { qty } from "../../../src/units/index.ts";
import { SPANISH_PRACTICE_WORDS } from "../../../src/words/es-practice.ts";
import { renderHtml, renderMarkdown, renderText } from "../../../src/worksheet/index.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const { set, problems } = practiceSet(7, { topics: ["rectangle-area", "band", "percent-mix"] });

describe("a practice sheet", () => {
  it("has a title, the class, lines for name and date, the set's number and the tolerance", () => {
    const text = renderText(
      practiceSheet(problems, { title: "Lesson 3", className: "Evening class", set, tolerancePercent: 2 }),
    );
    expect(text).toMatch(/^Lesson 3, set A-7\n/);
    expect(text).toMatch(/^Evening class$/m);
    expect(text).toMatch(/^Name: _{30}\nDate: _{30}$/m);
    expect(text).toMatch(/within 2%/);
    expect(text).toMatch(
      /rounded\s+to\s+one,\s+two,\s+or\s+three\s+figures,\s+is\s+right\s+too\s+if\s+it\s+is\s+within\s+5%/,
    );
    expect(renderText(practiceSheet(problems, { tolerancePercent: 0 }))).not.toMatch(/three figures/);
    expect(renderText(practiceSheet(problems, { nameAndDate: false }))).not.toContain("Name:");
  });

  it("has the factors that its problems need, each once, and no others", () => {
    const flat = (...args: Parameters<typeof practiceSheet>) =>
      renderText(practiceSheet(...args)).replace(/\s+/g, " ");
    const nozzle = problemFrom("catch-calibration", {
      caught: qty(16, "fl_oz"),
      time: qty(40, "s"),
      width: qty(15, "in"),
      speed: qty(3.3, "mph"),
    });
    expect(flat([nozzle, nozzle])).toContain(
      "You may need: 1 ft = 12 in; 1 mi = 5,280 ft; 1 h = 3,600 s; 1 gal = 128 fl oz; 1 ac = 43,560 sq ft.",
    );
    expect(flat([nozzle], { words: SPANISH_PRACTICE_WORDS, locale: "es-US" })).toContain(
      "Puede necesitar: 1 pie = 12 pulgadas;",
    );
    expect(flat([nozzle], { factors: false })).not.toContain("You may need");
    expect(flat([nozzle], { key: "short" })).not.toContain("You may need");
    // Nothing to change, and a unit whose name says its size.
    const label = problemFrom("season-limit", { limit: qty(6, "pt/ac"), done: 2, rate: qty(1.25, "pt/ac") });
    const lawn = problemFrom("lawn-rate", {
      length: qty(100, "ft"),
      width: qty(50, "ft"),
      rate: qty(1.5, "fl_oz/1000ft2"),
    });
    expect(flat([label, lawn])).not.toContain("You may need");
  });

  it("has the same number on its key, without lines for a name", () => {
    const key = practiceSheet(problems, { set, key: "short", workLines: 5 });
    expect(key.title).toBe("Practice problems, set A-7: key");
    const text = renderText(key);
    expect(text).not.toContain("Name:");
    expect(text).not.toMatch(/\n{5}/);
    expect(text).not.toContain("Working");
    expect(renderText(practiceSheet(problems, { set, key: "long" }))).toContain("Working");
    expect(practiceSheet(problems, { key: "long" }).title).toBe("Practice problems: key");
  });

  it("says how to see and to mend a mistake in the long key alone", () => {
    const [long, short] = (["long", "short"] as const).map((key) =>
      renderText(practiceSheet(problems, { key })).replace(/\s+/g, " "),
    );
    for (const { mistakes } of problems)
      for (const { what, see, mend } of mistakes.slice(0, 6)) {
        expect(short).toContain(what);
        for (const one of [what, see, mend]) expect(long).toContain(one);
        expect(short?.includes(mend)).toBe(false);
      }
  });

  it("writes out the constants of a change of unit in a long key, and nothing times 1", () => {
    const nozzle = problemFrom("catch-calibration", {
      caught: qty(16, "fl_oz"),
      time: qty(40, "s"),
      width: qty(15, "in"),
      speed: qty(3.3, "mph"),
    });
    const text = renderText(practiceSheet([nozzle], { key: "long" })).replace(/\s+/g, " ");
    expect(text).toContain("0.0661157 fl oz/sq ft × 43,560 sq ft in 1 ac ÷ 128 fl oz in 1 gal = 22.5 gal/ac");
    expect(text).toContain("16 fl oz ÷ (40 s × 4.84 ft/s × 1.25 ft) = 0.0661157 fl oz/sq ft");
  });

  it("names in a long key what its sums rest on", () => {
    const nozzles = problemFrom("nozzle-check", { catches: [40, 46, 38].map((one) => qty(one, "fl_oz")) });
    const reading = { walk: qty(24, "s"), caught: qty(25, "fl_oz"), time: qty(30, "s") };
    const text = renderText(practiceSheet([nozzles, problemFrom("strip-reading", reading)], { key: "long" }));
    for (const of of ["a mean", "a fraction", "a flow"]) expect(text).toContain(`definition of ${of}`);
  });

  it("lists the six likeliest mistakes, each of them once", () => {
    const strip = problemFrom("strip-calibration", {
      used: qty(64, "fl_oz"),
      swath: qty(36, "in"),
      distance: qty(363, "ft"),
    });
    const text = renderText(practiceSheet([strip], { key: "short" })).replace(/\s+/g, " ");
    const upsideDown = strip.mistakes.filter(({ mistake }) => mistake === "rate-inverted");
    expect(upsideDown.length).toBe(4);
    expect(text.split("The fraction was turned upside down.").length - 1).toBe(1);
    expect(text.match(/[\d.,]+ gal\/ac(?= [A-Z])/g)).toEqual([
      "2,560 gal/ac",
      "1.667 gal/ac",
      "0.05 gal/ac",
      "60 gal/ac",
      "0.0125 gal/ac",
      "0.0004591 gal/ac",
    ]);
  });

  it("lists a large wrong answer with the figures that a student has", () => {
    const plot = problemFrom("rectangle-area", { length: qty(121, "ft"), width: qty(99, "ft") });
    expect(renderText(practiceSheet([plot], { key: "short" }))).toContain("11,979 ac ");
  });

  it("goes from easy to hard whatever the order of the problems", () => {
    const text = renderText(practiceSheet([...problems].reverse()));
    const at = problems.map(({ problem }) => text.replace(/\s+/g, " ").indexOf(problem));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(Math.min(...at)).toBeGreaterThan(0);
  });

  it("leaves room to work, in every format", () => {
    const [with6, without] = [6, 0].map((workLines) => practiceSheet(problems, { workLines }));
    const lines = (text: string) => text.split("\n").length;
    expect(lines(renderText(with6 as never)) - lines(renderText(without as never))).toBeGreaterThanOrEqual(
      18,
    );
    expect(renderHtml(with6 as never).match(/<p><\/p>/g)?.length).toBe(18);
    expect(renderMarkdown(with6 as never).match(/&nbsp;/g)?.length).toBe(18);
    expect(renderLatex(with6 as never).match(/\\vspace\*\{48mm\}/g)?.length).toBe(3);
  });

  it("draws plots to scale in HTML, and nothing where there is nothing to draw", () => {
    const drawn = (one: Parameters<typeof practiceSheet>[0][number]) =>
      renderHtml(practiceSheet([one], { drawings: true }));
    const plot = drawn(problemFrom("rectangle-area", { length: qty(200, "ft"), width: qty(100, "ft") }));
    // 44 of 100 across for the longer side, with 28 and 15 around it.
    expect(plot).toContain('viewBox="0 0 100 52"');
    expect(plot).toContain('points="28,15 72,15 72,37 28,37"');
    expect(plot).toMatch(/<text [^>]*>200 ft<\/text>/);
    const rows = {
      rows: 3,
      rowLength: qty(60, "m"),
      bandWidth: qty(50, "cm"),
      rowSpacing: qty(2, "m"),
      rate: qty(1, "L/ha"),
    };
    expect(drawn(problemFrom("band", rows)).match(/class="treated"/g)?.length).toBe(3);
    expect(drawn(problemFrom("band", { ...rows, rows: 61 }))).not.toContain("<svg");
    expect(drawn(practiceProblem("percent-mix", 1))).not.toContain("<svg");
    expect(renderHtml(practiceSheet(problems))).not.toContain("<svg");
    const [trapezoid, triangle] = [
      drawn(problemFrom("trapezoid-area", { base: qty(80, "m"), top: qty(40, "m"), height: qty(80, "m") })),
      drawn(problemFrom("triangle-area", { base: qty(80, "m"), height: qty(40, "m") })),
    ];
    expect(trapezoid).toContain('points="28,59 72,59 61,15 39,15"');
    expect(triangle).toContain('points="28,37 72,37 45.6,15"');
    for (const label of [80, 40]) expect(trapezoid).toMatch(new RegExp(`<text [^>]*>${label} m</text>`));
    // 726 in are 60.5 ft: half as wide as long.
    const run = { used: qty(64, "fl_oz"), swath: qty(726, "in"), distance: qty(121, "ft") };
    const strip = drawn(problemFrom("strip-calibration", run));
    expect(strip).toContain('points="28,15 72,15 72,37 28,37"');
    expect(strip).toMatch(/<text [^>]*>726 in<\/text>/);
  });

  it("can be cards to cut out", () => {
    const cards = practiceSheet(problems, { cards: true });
    expect(renderHtml(cards).match(/<section class="card">/g)?.length).toBe(3);
    expect(renderText(cards).match(/^-{80}$/gm)?.length).toBe(6);
    expect(renderMarkdown(cards).match(/^---$/gm)?.length).toBe(3);
    expect(renderLatex(cards).match(/\\fbox\{/g)?.length).toBe(3);
    expect(renderLatex(practiceSheet(problems))).toContain("\\begin{minipage}{\\linewidth}");
  });

  it("writes an order of mixing and its key", () => {
    const order = problemFrom("mixing-order", { products: ["EC", "WP"] });
    const text = renderText(practiceSheet([order], { key: "long" }));
    expect(text).toMatch(/^Answer: BA$/m);
    expect(text.replace(/\s+/g, " ")).toContain("Unless the label says otherwise: conditioner first");
    expect(text).not.toContain("Working");
    expect(text).not.toContain("Sources");
    expect(renderText(practiceSheet([order, ...problems], { key: "long" }))).toContain("Sources");
  });

  it("refuses an option that there is not, or that is out of range", () => {
    expectRefused(
      () => practiceSheet(problems, { answers: true } as never),
      "unknown-field",
      "options.answers",
    );
    expectRefused(() => practiceSheet(problems, { workLines: 31 }), "out-of-range", "options.workLines");
    expectRefused(() => practiceSheet(problems, { key: "full" as never }), "unknown-choice", "options.key");
    expectRefused(() => practiceSheet(problems, { title: " " }), "missing", "options.title");
    for (const tolerancePercent of [-0.1, 5.1])
      expectRefused(
        () => practiceSheet(problems, { tolerancePercent }),
        "out-of-range",
        "options.tolerancePercent",
      );
  });
});
