import { type PlanInput, planApplication } from "../../src/plan/index.ts";
import { qty } from "../../src/units/index.ts";

/** An ordinary job of an invented farm: bands along rows, a liquid and a dry product, two loads. */
export const TWO_PRODUCTS: PlanInput = {
  plot: {
    kind: "row-bands",
    rows: 14,
    rowLength: qty(160, "ft"),
    bandWidth: qty(30, "in"),
    rowSpacing: qty(5, "ft"),
  },
  calibration: { kind: "strip", used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") },
  sprayer: { tank: qty(4, "gal"), workingFill: qty(3.5, "gal"), lineVolume: qty(10, "fl_oz") },
  reserve: { percent: 5 },
  products: [
    { name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac"), formulation: "EC" },
    { name: "Product B", form: "dry", rate: qty(12, "oz/ac"), formulation: "WG" },
  ],
  tools: "us-spoons",
};

/** A strip that comes to 20 gal/ac: half a gallon on a fortieth of an acre. */
export const STRIP = {
  kind: "strip",
  used: qty(64, "fl_oz"),
  swath: qty(4, "ft"),
  distance: qty(272.25, "ft"),
} as const;

/** A job that a careful colleague has nothing to say about. */
export const QUIET: PlanInput = {
  plot: { kind: "rectangle", length: qty(90, "ft"), width: qty(60, "ft") },
  calibration: STRIP,
  sprayer: { tank: qty(4, "gal") },
  products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
  tools: "us-cups-and-spoons",
};

/** A job in which much is to be questioned: refusals, warnings and notes, and a dose that cannot be measured. */
export const DOUBTFUL: PlanInput = {
  plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
  calibration: { kind: "strip", used: qty(2, "L"), swath: qty(50, "cm"), distance: qty(100, "m") },
  sprayer: { tank: qty(15, "L") },
  addedWater: qty(2, "L"),
  products: [
    {
      name: "Product A 8 oz",
      form: "liquid",
      rate: qty(2, "L/ha"),
      label: { max: qty(1.5, "L/ha"), leastCarrier: qty(500, "L/ha") },
    },
    { name: "Product B", form: "liquid", rate: qty(1, "mL/ha") },
  ],
  tools: "metric-spoons",
};

/** Names that mean something to a terminal, to Markdown, LaTeX, HTML, or to the texts with places of the library itself. */
export const HOSTILE_NAMES: readonly string[] = [
  "<script>alert(1)</script><img src=x onerror=alert(2)>",
  "\"'><style>*{display:none}</style>&amp;&lt;",
  "a | b || c\nd\r\n\n# e\n- f\n1. g\n| h |",
  "\\ $x$ $$ # % & _ ~ ^ { } \\input{/etc/passwd} \\end{document}",
  "`code` **bold** _under_ [link](javascript:alert(1)) ![pic](http://example.com/y.png) <http://example.com> www.example.com http://example.com a@example.com ~~gone~~",
  "\u001b[31mred\u001b[0m \u0007 \u202egnp.exe \u2066x\u2069 \u2028y",
  "{product} {amount} {n} {x} __proto__ constructor",
  "# heading",
  "- item",
  "1. item",
  "--- ,, << >> ?` !` '' \"\"",
];

/** The plan of {@link TWO_PRODUCTS} with other names. */
export function planNamed(names: readonly [string, string]): ReturnType<typeof planApplication> {
  const products = TWO_PRODUCTS.products.map((product, i) => ({ ...product, name: names[i] as string }));
  return planApplication({ ...TWO_PRODUCTS, products });
}
