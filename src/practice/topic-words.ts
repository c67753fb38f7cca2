import type { PracticeTopic } from "./topics/all.js";
import type { Wordings } from "./topics/topic.js";

/** A topic in words. */
export interface TopicWords {
  /** What it is called. */
  readonly name: string;
  /** Four ways to put a problem. Each figure has a place by its name, `{unit}` is the answer's unit, `{farm}` a farm. */
  readonly problems: Wordings;
  /** What is said of the answer beside its figure. */
  readonly note?: string | undefined;
}

/** The topics in English. */
export const ENGLISH_TOPICS: Readonly<Record<PracticeTopic, TopicWords>> = {
  "rectangle-area": {
    name: "Area of a rectangle",
    problems: [
      "A vegetable field at {farm} is a rectangle, {length} long and {width} wide. What is its area ({unit})?",
      "A sports field at {farm} measures {length} by {width}, with square corners. What is its area ({unit})?",
      "The nursery at {farm} sprays a rectangular block. It is {width} wide and {length} long. How large is the block ({unit})?",
      "You pace off part of a pasture at {farm}. It is {length} long and {width} wide, with square corners. What is its area ({unit})?",
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
  "timed-speed": {
    name: "Speed from a timed distance",
    problems: [
      "At {farm} you drive the marked {distance} in {time}. How fast do you travel ({unit})?",
      "Two stakes in the vegetable field at {farm} are {distance} apart. You drive the sprayer from one to the other in {time}. What is your speed ({unit})?",
      "On the turf at {farm} the sprayer takes {time} for {distance}. What is its speed ({unit})?",
      "Between the vineyard rows at {farm} the tractor covers {distance} in {time}. What is the working speed ({unit})?",
    ],
  },
  "household-measure": {
    name: "Level spoons, rounded down",
    problems: [
      "One backpack load for the vegetables at {farm} takes {amount} of product. You have a measuring spoon of {spoon}. How many level spoons can go in without going over?",
      "For the greenhouse at {farm} you need {amount} of product in the tank. Your spoon holds {spoon}. How many whole level spoons do you put in without going over?",
      "The tank for the roses at {farm} takes {amount} of product. The only measure at hand is a spoon of {spoon}. What is the largest number of level spoons you may use?",
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
  "strip-reading": {
    name: "Rate read off the catch",
    problems: [
      "At {farm} you mark a strip on which the catch of one nozzle in {caught.unit} is the same number as the rate in {unit}. Walking it takes {walk}. Standing still, you catch {caught} from one nozzle in {time}. What is the output rate ({unit})?",
      "In the orchard at {farm} you mark a strip of such a length that the catch on it in {caught.unit} equals the rate in {unit}. Driving it takes {walk}. With the tractor parked, one nozzle gives {caught} in {time}. What is the output rate ({unit})?",
      "On the turf at {farm} you lay out a strip of the length at which the catch of one nozzle in {caught.unit} equals the rate in {unit}. You walk it in {walk}. In the yard you catch {caught} from one nozzle in {time}. What is the output rate ({unit})?",
      "In the vegetable field at {farm} you time {walk} for a marked strip. On it, the catch of one nozzle in {caught.unit} equals the rate in {unit}. In the yard you catch {caught} from one nozzle in {time}. What is the output rate ({unit})?",
    ],
  },
  "season-limit": {
    name: "The season's limit",
    problems: [
      "The label of a product used at {farm} allows {limit} in a season. There were {done} {done:one=application;other=applications} of {rate}. How many more at this rate are allowed?",
      "In the orchard at {farm} a product was applied {done} {done:one=time;other=times} at {rate}. The season's limit is {limit}. How many more times may it be applied at this rate?",
      "A vineyard at {farm} may get {limit} of a product in a season. It has had {done} {done:one=spray;other=sprays} of {rate}. How many more sprays at this rate does the label allow?",
      "The greenhouse at {farm} keeps a record: {done} {done:one=application;other=applications} so far, at {rate} each. The label's limit for the season is {limit}. How many more applications at this rate are left?",
    ],
  },
  "mixing-order": {
    name: "Mixing order",
    problems: [
      "At {farm} these go into one tank: {products}. The label gives no other order. Write the letters in the order in which they are added.",
      "For the vegetables at {farm} you mix {products}. The label gives no other order. Put the letters in the order in which the products go into the water.",
      "The orchard sprayer at {farm} is half full of water. Still to come are {products}. The label gives no other order. Write the letters, the first one first.",
      "A helper at {farm} has set out {products}. The label gives no other order. Write the letters in the order of mixing.",
    ],
  },
  "strip-calibration": {
    name: "Output rate from a test strip",
    problems: [
      "On a test strip of {distance} at {farm}, sprayed {swath} wide, the sprayer used {used} of water. What is the output rate ({unit})?",
      "You calibrate a backpack sprayer for the vegetables at {farm}. You walk {distance}, spray a band {swath} wide, and need {used} of water to refill to the mark. What is the output rate ({unit})?",
      "In the vineyard at {farm} you spray a strip under the vines, {distance} long and {swath} wide. Refilling takes {used}. What is the output rate ({unit})?",
      "On the turf at {farm} the spray covers a width of {swath}. After {distance} it takes {used} to refill the sprayer. What is the output rate ({unit})?",
    ],
  },
  "catch-calibration": {
    name: "Output rate from one nozzle",
    problems: [
      "One nozzle of the boom at {farm} gives {caught} of water in {time}. The nozzles are {width} apart, and the sprayer travels at {speed}. What is the output rate ({unit})?",
      "You hold a jug under a nozzle at {farm} for {time} and catch {caught}. The nozzle spacing is {width} and the tractor travels at {speed}. What is the output rate ({unit})?",
      "The turf sprayer at {farm} travels at {speed}. Its nozzles are {width} apart, and each one gives {caught} in {time}. What is the output rate ({unit})?",
      "In the vegetable field at {farm} each nozzle covers {width}. In {time} it gives {caught}. The working speed is {speed}. What is the output rate ({unit})?",
    ],
  },
  "boom-catch": {
    name: "Output rate from several nozzles",
    problems: [
      "Under a boom at {farm} the nozzles give {catches} of water in {time}. They are {width} apart, and the sprayer travels at {speed}. What is the output rate of the boom ({unit})?",
      "You catch {catches} from the nozzles of the turf sprayer at {farm}, each for {time}. The nozzle spacing is {width} and the speed {speed}. What is the output rate ({unit})?",
      "The vegetable sprayer at {farm} travels at {speed}. Its nozzles are {width} apart and give {catches} in {time}. What is the output rate ({unit})?",
      "For the pasture edge at {farm} you check every nozzle of the boom. In {time} you catch {catches}. The nozzles are {width} apart, and you travel at {speed}. What is the output rate ({unit})?",
    ],
  },
  "nozzle-check": {
    name: "Nozzle check",
    problems: [
      "The nozzles of a boom at {farm} give {catches} in the same time. How far is the worst one off the average, in percent of the average? Write it without a sign.",
      "You check the turf sprayer at {farm} and catch {catches} in the same time. Find the nozzle that is furthest from the average. How far off is it, in percent of the average, without a sign?",
      "In one minute the nozzles over the vegetables at {farm} give {catches}. One of them is furthest from the average. How far off is it, in percent of the average? Write no sign.",
      "You catch {catches} from the nozzles of the vineyard sprayer at {farm}, all in the same time. What is the largest deviation from the average, in percent of the average and without a sign?",
    ],
    note: "Nozzle {nozzle} is the furthest off: it gave {caught}, and the average is {average}.",
  },
  "tank-loads": {
    name: "How many loads",
    problems: [
      "Of a field of {ground} at {farm}, {area} is sprayed. The output rate is {rate}, and the tank is filled to {fill}. How many loads does the job take?",
      "The orchard at {farm} covers {ground}. Only the strips under the trees are sprayed, a total of {area}. The sprayer puts out {rate}, and a load is {fill}. How many loads do you mix?",
      "A vineyard at {farm} measures {ground}, of which {area} is treated. The output rate is {rate}, and a full tank is {fill}. How many loads do you mix?",
      "At {farm} the thistles cover {area} of a pasture of {ground}. You spray only the thistles, at {rate}, with tank loads of {fill}. How many loads is that?",
    ],
  },
  "lawn-rate": {
    name: "Rate for a lawn",
    problems: [
      "A lawn at {farm} is {length} long and {width} wide. The label rate is {rate}. How much product does the lawn need ({unit})?",
      "Part of the sports field at {farm} measures {length} by {width}. The label rate is {rate}. How much product is that ({unit})?",
      "In the nursery at {farm} a block of {length} by {width} is sprayed at {rate}. How much product do you measure out ({unit})?",
      "The greenhouse floor at {farm} is {width} wide and {length} long. The label allows {rate}. How much product may you use on it ({unit})?",
    ],
  },
  granules: {
    name: "Granules",
    problems: [
      "Granules go on a lawn of {length} by {width} at {farm}. The label rate is {rate}. How much do you weigh out ({unit})?",
      "A block of the nursery at {farm} is {length} long and {width} wide. It gets granules at {rate}. What weight of granules does it take ({unit})?",
      "At {farm} you spread granules on the turf beside the clubhouse, {width} wide and {length} long, at {rate}. How much is needed ({unit})?",
      "A vegetable plot of {length} by {width} at {farm} gets granules at {rate}. How much goes into the spreader ({unit})?",
    ],
  },
  fertilizer: {
    name: "Fertilizer for a nutrient",
    problems: [
      "A soil test at {farm} asks for nitrogen at {needed} on {area} of lawn. The bag says {nitrogen}-0-0. How much fertilizer does the lawn need ({unit})?",
      "The vegetables at {farm} need nitrogen at {needed}. The bag of fertilizer says {nitrogen}-0-0, and the plot measures {area}. How much do you weigh out ({unit})?",
      "On {area} of turf at {farm} you put down nitrogen at {needed} from a bag of {nitrogen}-0-0. How much goes into the spreader ({unit})?",
      "The nursery at {farm} feeds {area} with nitrogen at {needed}. The first number on the bag is {nitrogen}. How much fertilizer does that take ({unit})?",
    ],
  },
  "row-length": {
    name: "Rate per length of row",
    problems: [
      "At {farm} there are {rows} rows of cabbage, each {rowLength} long. The label rate is {rate} of row. How much product do all the rows need ({unit})?",
      "You water in transplants in {rows} rows at {farm}. Each row is {rowLength} long, and the label says {rate} of row. How much product do you measure out ({unit})?",
      "The furrows at {farm} are drenched at {rate} of row. There are {rows} of them, each {rowLength} long. How much product is needed ({unit})?",
      "A label allows {rate} of row. The strawberries at {farm} stand in {rows} rows of {rowLength}. How much product may you use on them ({unit})?",
    ],
  },
  "dry-product": {
    name: "Dry product",
    problems: [
      "On {area} of vegetables at {farm} you spray a wettable powder at {rate}. How much powder do you weigh out ({unit})?",
      "The vineyard block at {farm} has {area} to treat. The label rate of a dry product is {rate}. How much is needed ({unit})?",
      "An orchard at {farm} gets {rate} of a powder on {area}. How much do you put on the scale ({unit})?",
      "In the nursery at {farm}, {area} is treated with water-dispersible granules at {rate}. How much do you weigh out ({unit})?",
    ],
  },
  "product-per-tank": {
    name: "Product in a full tank",
    problems: [
      "The label rate is {rate}. The sprayer at {farm} puts out {carrierRate}, and its tank is filled to {fill}. The product weighs {density}. How much product goes into the water for a full tank ({unit})?",
      "For the vegetables at {farm} you calibrated the sprayer to {carrierRate}. The label says {rate} of a liquid that weighs {density}. How much of it goes into {fill} of mix ({unit})?",
      "A sprayer in the orchard at {farm} holds {fill} and puts out {carrierRate}. The product weighs {density}, and the label rate is {rate}. How much product goes into the mix for a full tank ({unit})?",
      "On the turf at {farm} you spray {carrierRate}. The product weighs {density}, and the label rate is {rate}. How much product does a tank of {fill} need ({unit})?",
    ],
  },
  "plant-timing": {
    name: "Seconds per plant",
    problems: [
      "The hand gun at {farm} fills a bucket with {caught} in {time}. Each tree is to get {each} of mix. How long do you spray each tree ({unit})?",
      "In the greenhouse at {farm} the wand gives {caught} in {time}. Each pot gets {each}. How long do you drench each pot ({unit})?",
      "You test the wand with water at {farm}: {caught} in {time}. Each bramble along the fence takes {each} of mix. How long do you spray each one ({unit})?",
      "In the vineyard at {farm} each vine gets {each} at its foot. From the hand gun you catch {caught} in {time}. How long do you stay at each vine ({unit})?",
    ],
  },
  "spot-tank": {
    name: "Spots, in percent",
    problems: [
      "In a pasture at {farm} you spray {spots} thistles, each with {each} of mix. The label calls for {percent} of product in the mix. How much product do you need ({unit})?",
      "There are {spots} brambles along the orchard fence at {farm}. Each takes {each} of a {percent} mix. How much product goes into the spot sprayer ({unit})?",
      "On the turf at {farm} {spots} patches get {each} of mix each. The mix has {percent} of product. How much product do all the patches take ({unit})?",
      "The edge of the vineyard at {farm} has {spots} nettles to spot-spray. You allow {each} of mix for each one. The label says {percent}. How much product do you measure out ({unit})?",
    ],
  },
  dilution: {
    name: "Diluting a concentrate",
    problems: [
      "A sprayer cleaner is sold at a strength of {from}. You need {volume} at {to}. How much cleaner do you add to water to make it ({unit})?",
      "The greenhouse at {farm} disinfects its benches with {volume} of a {to} solution. The concentrate is {from}. How much concentrate do you need ({unit})?",
      "To clean pruning shears, the nursery at {farm} makes up {volume} of a {to} solution from a concentrate of {from}. How much concentrate goes in ({unit})?",
      "Crates at {farm} are washed in {volume} of a {to} solution. The drum says {from}. How much do you take from the drum ({unit})?",
    ],
  },
  injector: {
    name: "Ratio injector",
    problems: [
      "An injector in the greenhouse at {farm} makes {ratio} parts of solution from 1 part of stock. The label calls for {rate} in the solution. How much product goes into {stock} of stock ({unit})?",
      "The nursery at {farm} waters through an injector set to 1:{ratio}, one part of stock in {ratio} parts of solution. The plants need {rate}. How much product do you put into {stock} of stock ({unit})?",
      "At {farm} the injector for the strawberries takes 1 part of stock for {ratio} parts of finished solution. The solution must have {rate}. How much product goes into {stock} of stock ({unit})?",
      "The stock tank of an injector at {farm} is filled with {stock}. Each part of it gives {ratio} parts of solution, and the label rate is {rate} of solution. How much product goes into the tank ({unit})?",
    ],
  },
  reserve: {
    name: "Extra mix",
    problems: [
      "On {area} of vegetables at {farm} you spray {carrierRate}, and mix {extra} extra. The label rate is {rate}. How much product goes into the whole mix ({unit})?",
      "The orchard sprayer at {farm} puts out {carrierRate} on {area}. To be safe you mix {extra} extra. The label rate is {rate}. How much product does the whole mix need ({unit})?",
      "A vineyard of {area} at {farm} is sprayed at {carrierRate}. You mix {extra} more than the vineyard takes. The label says {rate}. How much product goes into the whole mix ({unit})?",
      "On the turf at {farm}, {area} is sprayed at {carrierRate}. You mix {extra} more as a reserve, as strong as the rest. The label rate is {rate}. How much product goes into the whole mix ({unit})?",
    ],
  },
  "tree-row-volume": {
    name: "Tree-row volume",
    problems: [
      "The apple trees at {farm} are {height} high and {width} wide, in rows {rowSpacing} apart. It takes {spray} of canopy to wet them. How much spray is that for the land they stand on ({unit})?",
      "In an orchard at {farm} the rows are {rowSpacing} apart. The canopy is {height} from bottom to top and {width} wide. At {spray} of canopy the leaves just start to drip. How much dilute spray does the orchard take ({unit})?",
      "The cherry trees at {farm} form a hedge {height} high and {width} wide, with {rowSpacing} from row to row. You allow {spray} of canopy. What is the dilute rate ({unit})?",
      "A block of pear trees at {farm} has a row every {rowSpacing}. The canopy is {width} wide and {height} high. The spray is {spray} of canopy. What is the dilute rate per area of land ({unit})?",
    ],
  },
  band: {
    name: "Product for bands along rows",
    problems: [
      "At {farm} there are {rows} rows of vegetables, {rowLength} long and {rowSpacing} apart. Each is sprayed in a band {bandWidth} wide. The label rate is {rate} of treated area. How much product do all the rows need ({unit})?",
      "A berry field at {farm} has {rows} rows of {rowLength}, spaced {rowSpacing}. A band of {bandWidth} is sprayed along each row. The label rate is {rate} of treated area. How much product is that ({unit})?",
      "In the vineyard at {farm} you spray a band {bandWidth} wide under each of {rows} rows. The rows are {rowLength} long and {rowSpacing} apart, and the label allows {rate} of treated area. How much product do you need ({unit})?",
      "The nursery at {farm} sprays {rows} rows of young trees. Each row is {rowLength} long and gets a band of {bandWidth}. The rows are {rowSpacing} apart. The label rate is {rate} of treated area. How much product does the job take ({unit})?",
    ],
  },
  "whole-job": {
    name: "The whole job",
    problems: [
      "At {farm} there are {rows} rows, {rowLength} long and {rowSpacing} apart. Each is sprayed in a band {bandWidth} wide. On a test strip of {distance}, in the same band, the sprayer used {used} of water. The tank is filled to {fill}: full tanks first, then a last load with the rest. The label rate is {rate} of treated area. How much product goes into the last load ({unit})?",
      "You spray a band {bandWidth} wide along each of {rows} rows of shrubs at {farm}. The rows are {rowLength} long and {rowSpacing} apart. Walking a test strip of {distance} used {used} of water in that band. You mix full tanks of {fill}, and then a last load with what is left. The label rate is {rate} of treated area. How much product goes into the last load ({unit})?",
      "The vineyard at {farm} has {rows} rows of {rowLength}, spaced {rowSpacing}. Under each one you spray a band of {bandWidth}. On a test strip of {distance} in that band the sprayer used {used} of water. You mix full tanks of {fill}, then a last load with the rest. The label rate is {rate} of treated area. How much product does the last load get ({unit})?",
      "At {farm} you plan {rows} rows of berries, {rowLength} each, {rowSpacing} apart, with a sprayed band of {bandWidth}. Your test strip of {distance} in that band took {used} of water. You fill the tank to {fill} as often as you can, and mix the rest as a last load. The label says {rate} of treated area. How much product is for the last load ({unit})?",
    ],
  },
};
