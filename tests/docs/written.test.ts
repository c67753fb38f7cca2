import { describe, expect, it } from "vitest";
import { range, rounded, rowsOf } from "../bench/speed.mjs";
import { table, withWritten, writtenIn } from "../helpers/written.mjs";

const PAGE = `# Speed

<!-- speed: written by \`npm run bench\` -->

| old |

<!-- end -->

Between them.

<!-- sizes: written by \`npm run size\` -->

| 1 kB |

<!-- end -->
`;

describe("what scripts write into pages", () => {
  it("stands between its own marks, and leaves all else as it was", () => {
    const after = withWritten(PAGE, "speed", "| $1 $& new |");
    expect(writtenIn(after, "speed")).toBe("| $1 $& new |");
    expect(writtenIn(after, "sizes")).toBe("| 1 kB |");
    expect(after.replace("| $1 $& new |", "| old |")).toBe(PAGE);
  });

  it("is refused where a page has no marks of that name", () => {
    expect(() => withWritten(PAGE, "spe", "new")).toThrow("no place for spe");
    expect(() => writtenIn("# Speed", "speed")).toThrow("no place for speed");
  });

  it("is a table whose columns of numbers are flush right", () => {
    expect(table(["What", "Time:"], [["a", 1]])).toBe("| What | Time |\n| --- | ---: |\n| a | 1 |");
  });
});

describe("the table of speeds", () => {
  it("has two digits of each number", () => {
    expect([0.0349, 5.04, 36.4, 4447, 24_700].map(rounded)).toEqual(["0.035", "5", "36", "4,400", "25,000"]);
  });

  it("has the least and the most of several runs, or one number where both are alike", () => {
    expect(range([73, 36.2, 40])).toBe("36 to 73");
    expect(range([36.2, 35.8])).toBe("36");
  });

  it("puts the runs of one bench together, row by row, each time in one unit", () => {
    const run = (time: number, ratio: number) => [
      {
        what: "a plan",
        time,
        against: [
          [ratio, "times as fast as by hand"],
          [2, "as by table"],
        ],
      },
      { what: "a batch", time: time * 100, against: [[1, "times one"]] },
    ];
    expect(rowsOf([run(36_000, 5), run(73_000, 2.5), run(40_000, 4.6)])).toEqual([
      ["a plan", "36 to 73 µs", "2.5 to 5 times as fast as by hand; 2 as by table"],
      ["a batch", "3.6 to 7.3 ms", "1 times one"],
    ]);
  });
});
