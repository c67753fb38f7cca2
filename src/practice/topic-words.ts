import type { PracticeTopic } from "./topics/all.js";
import type { Wordings } from "./topics/topic.js";

/** A topic in words. */
export interface TopicWords {
  /** What it is called. */
  readonly name: string;
  /** Four ways to put a problem. Each figure has a place by its name, `{unit}` is the answer's unit, `{farm}` a farm. */
  readonly problems: Wordings;
}

/** The topics in English. */
export const ENGLISH_TOPICS: Readonly<Record<PracticeTopic, TopicWords>> = {
  "rectangle-area": {
    name: "Area of a rectangle",
    problems: [
      "A vegetable field at {farm} is a rectangle, {length} long and {width} wide. What is its area ({unit})?",
      "A sports turf at {farm} measures {length} by {width}, with square corners. What is its area ({unit})?",
      "The nursery at {farm} wants to spray a rectangular block. It is {width} wide and {length} long. How large is the block ({unit})?",
      "You pace off a pasture edge at {farm}: a strip {length} long and {width} wide. What is the area of the strip ({unit})?",
    ],
  },
  "triangle-area": {
    name: "Area of a triangle",
    problems: [
      "A corner of the vegetable field at {farm} is a triangle. Its base is {base}, and the opposite corner is {height} from the base. What is its area ({unit})?",
      "Two lanes at {farm} cut a triangle out of the orchard. One side is {base} long. Measured square to that side, the far corner is {height} away. What is the area of the triangle ({unit})?",
      "The lawn behind the packing shed at {farm} has three corners. The side along the shed is {base}, and the lawn reaches {height} back from it. What is its area ({unit})?",
      "A vineyard block at {farm} runs to a point. It is {base} wide at the road and {height} deep. How large is the block ({unit})?",
    ],
  },
  "trapezoid-area": {
    name: "Area of a trapezoid",
    problems: [
      "A plot at {farm} has two parallel sides, {base} and {top}. They are {height} apart. What is the area of the plot ({unit})?",
      "A vineyard block at {farm} gets narrower uphill. It is {base} wide at the bottom, {top} wide at the top, and {height} from bottom to top. What is its area ({unit})?",
      "The first row of an orchard at {farm} is {base} long and the last row is {top} long. The rows are parallel, and it is {height} from the first to the last. What is the area between them ({unit})?",
      "A pasture edge at {farm} lies between two parallel fences, {top} and {base} long, {height} apart. What is its area ({unit})?",
    ],
  },
  "household-measure": {
    name: "Spoons, never over",
    problems: [
      "One backpack load for the vegetables at {farm} takes {amount} of product. You have a measuring spoon of {spoon}. How many level spoons can go in without going over?",
      "For the greenhouse at {farm} you need {amount} of product in the tank. Your spoon holds {spoon}. How many whole level spoons do you put in, never over?",
      "The tank for the roses at {farm} takes {amount} of product. The only measure at hand is a spoon of {spoon}. How many full level spoons are the most you may use?",
      "A spot-spray load at {farm} takes {amount} of product, and the spoon holds {spoon}. How many whole level spoons go in if the dose must not be exceeded?",
    ],
  },
  "percent-mix": {
    name: "Percent of the mix",
    problems: [
      "The label calls for {percent} of an additive in the mix. How much of it goes into a tank of {fill} at {farm} ({unit})?",
      "You treat the nursery beds at {farm}. The label says to add {percent} of a spreader. The tank is filled to {fill}. How much spreader is that ({unit})?",
      "For the orchard at {farm} you mix {fill} of spray with {percent} of oil. How much oil do you measure out ({unit})?",
      "The greenhouse sprayer at {farm} holds {fill}. The label asks for {percent} of product in the finished mix. How much product goes in ({unit})?",
    ],
  },
  "strip-calibration": {
    name: "Output rate from a test strip",
    problems: [
      "On a test strip of {distance} at {farm}, sprayed {swath} wide, the sprayer used {used} of water. What is the output rate ({unit})?",
      "You calibrate a backpack sprayer for the vegetables at {farm}. You walk {distance}, spray a band {swath} wide, and need {used} of water to refill to the mark. What is the output rate ({unit})?",
      "In the vineyard at {farm} you spray a strip under the vines, {distance} long and {swath} wide. Refilling takes {used}. What is the output rate ({unit})?",
      "On the turf at {farm} the spray covers a width of {swath}. After {distance} the sprayer is short by {used}. What is the output rate ({unit})?",
    ],
  },
  "catch-calibration": {
    name: "Output rate from one nozzle",
    problems: [
      "One nozzle of the boom at {farm} gives {caught} of water in {time}. The nozzles are {width} apart, and the sprayer travels at {speed}. What is the output rate ({unit})?",
      "You hold a jug under a nozzle at {farm} for {time} and catch {caught}. The nozzle spacing is {width} and the tractor drives {speed}. What is the output rate ({unit})?",
      "The turf sprayer at {farm} travels at {speed}. Its nozzles are {width} apart, and each one fills {caught} in {time}. What is the output rate ({unit})?",
      "In the vegetable field at {farm} each nozzle covers {width}. In {time} it gives {caught}. The working speed is {speed}. What is the output rate ({unit})?",
    ],
  },
  "tank-loads": {
    name: "How many loads",
    problems: [
      "Of a field of {ground} at {farm}, {area} are sprayed. The output rate is {rate}, and the tank is filled to {fill}. How many loads does the job take?",
      "The orchard at {farm} has {ground}. Only the strips under the trees are sprayed, {area} in all. The sprayer puts out {rate}, and a load is {fill}. How many loads do you mix?",
      "A vineyard at {farm} measures {ground}, of which {area} are treated. How many times do you fill the tank to {fill} at an output rate of {rate}?",
      "At {farm} the thistles cover {area} of a pasture of {ground}. You spray only the thistles, at {rate}, with tank loads of {fill}. How many loads is that?",
    ],
  },
  "product-per-tank": {
    name: "Product in a full tank",
    problems: [
      "The label rate is {rate}. The sprayer at {farm} puts out {carrierRate}, and its tank is filled to {fill}. The product weighs {density}. How much product goes into a full tank ({unit})?",
      "For the vegetables at {farm} you calibrated the sprayer to {carrierRate}. The label says {rate} of a liquid that weighs {density}. How much of it goes into {fill} of mix ({unit})?",
      "An orchard sprayer at {farm} holds {fill} and puts out {carrierRate}. How much product do you pour into a full tank at a label rate of {rate}, if the product weighs {density} ({unit})?",
      "On the turf at {farm} you spray {carrierRate}. The product weighs {density}, and the label rate is {rate}. How much product does a tank of {fill} need ({unit})?",
    ],
  },
  dilution: {
    name: "Diluting a concentrate",
    problems: [
      "A sprayer cleaner is sold at a strength of {from}. You need {volume} at {to}. How much cleaner do you make up with water ({unit})?",
      "The greenhouse at {farm} disinfects its benches with {volume} of a {to} solution. The concentrate is {from}. How much concentrate do you need ({unit})?",
      "To clean pruning shears, the nursery at {farm} makes up {volume} of a {to} solution from a concentrate of {from}. How much concentrate goes in ({unit})?",
      "Crates at {farm} are washed in {volume} of a {to} solution. The drum says {from}. How much do you take from the drum ({unit})?",
    ],
  },
  band: {
    name: "Product for bands along rows",
    problems: [
      "{rows} rows of vegetables at {farm}, each {rowLength} long and {rowSpacing} apart, are each sprayed in a {bandWidth} band. The label rate is {rate} of treated area. How much product do all the rows need ({unit})?",
      "An orchard at {farm} has {rows} tree rows of {rowLength}, spaced {rowSpacing}. A band of {bandWidth} is sprayed along each row. How much product is that at {rate} of treated area ({unit})?",
      "In the vineyard at {farm} you spray a {bandWidth} band under each of {rows} rows. The rows are {rowLength} long and {rowSpacing} apart, and the label allows {rate} of treated area. How much product do you need ({unit})?",
      "The nursery at {farm} sprays {rows} rows of young trees. Each row is {rowLength} long and gets a band of {bandWidth}. The rows are {rowSpacing} apart. The label rate is {rate} of treated area. How much product does the job take ({unit})?",
    ],
  },
  "whole-job": {
    name: "The whole job",
    problems: [
      "{rows} rows at {farm}, each {rowLength} long and {rowSpacing} apart, are each sprayed in a {bandWidth} band. On a test strip of {distance}, in the same band, the sprayer used {used} of water. The tank is filled to {fill}: full tanks first, then a last load with the rest. The label rate is {rate} of treated area. How much product goes into the last load ({unit})?",
      "You spray a {bandWidth} band along each of {rows} tree rows at {farm}. The rows are {rowLength} long and {rowSpacing} apart. Walking a test strip of {distance} used {used} of water in that band. You mix full tanks of {fill}, and then a last load with what is left. How much product goes into the last load at {rate} of treated area ({unit})?",
      "The vineyard at {farm} has {rows} rows of {rowLength}, spaced {rowSpacing}. Under each one you spray a band of {bandWidth}. Over {distance} the sprayer used {used} of water. The tank takes {fill}, and the last load is smaller. The label rate is {rate} of treated area. How much product does the last load get ({unit})?",
      "At {farm} you plan {rows} rows of berries, {rowLength} each, {rowSpacing} apart, with a sprayed band of {bandWidth}. Your test strip of {distance} in that band took {used} of water. You fill the tank to {fill} as often as you can, and mix the rest as a last load. The label says {rate} of treated area. How much product is for the last load ({unit})?",
    ],
  },
};
