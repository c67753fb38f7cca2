import type { Product } from "../../src/plan/index.ts";
import { qty } from "../../src/units/index.ts";

// A product's rate goes with its form: a weight for a liquid doesn't compile, nor a volume for what is dry.
const products: Product[] = [
  { name: "Product A", form: "liquid", rate: qty(2, "pt/ac") },
  { name: "Product B", form: "dry", rate: qty(12, "oz/ac"), bulkDensity: qty(5, "lb/gal") },
  { name: "Product C", form: "liquid", rate: { rate: qty(2, "L/ha"), per: "ground" } },
  {
    name: "Product D",
    form: "dry",
    rate: { low: qty(1, "kg/ha"), high: qty(2, "kg/ha"), chosen: qty(1, "kg/ha") },
  },
  // @ts-expect-error
  { name: "Product E", form: "liquid", rate: qty(1, "lb/ac") },
  // @ts-expect-error
  { name: "Product F", form: "dry", rate: qty(2, "pt/ac") },
  // @ts-expect-error
  { name: "Product G", form: "liquid", rate: { rate: qty(1, "kg/ha"), per: "ground" } },
  {
    name: "Product H",
    form: "dry",
    // @ts-expect-error
    rate: { low: qty(1, "kg/ha"), high: qty(2, "L/ha"), chosen: qty(1, "kg/ha") },
  },
  // @ts-expect-error
  { name: "Product I", form: "liquid", rate: qty(2, "pt/ac"), bulkDensity: qty(5, "lb/gal") },
];
products.length;
