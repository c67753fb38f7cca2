import { plantedGround, rectangleArea, triangleArea } from "../../src/area/index.ts";
import { type Quantity, qty, valueIn } from "../../src/units/index.ts";
import { agrees, type HandbookCase, topic } from "./harness.ts";

const feet = (one: HandbookCase, key: string): Quantity<"ft"> => qty(Number(one.inputs[key]?.[0]), "ft");

topic("13_area_more", () => {
  agrees("trade_cider_ac", (one) => {
    const orchard = plantedGround({
      plants: Number(one.inputs.trees?.[0]),
      rowSpacing: feet(one, "row"),
      plantSpacing: feet(one, "tree"),
    });
    return [{ key: "area", ours: valueIn(orchard, "ac"), within: 0.005 }];
  });

  agrees("trade_tpwd_triangle", (one) => {
    const pond = triangleArea({ base: feet(one, "base"), height: feet(one, "height") });
    return [
      { key: "ft2", ours: valueIn(pond, "ft2"), within: 0.5 },
      { key: "acres", ours: valueIn(pond, "ac"), within: 0.005 },
    ];
  });

  agrees("trade_tpwd_rect", (one) => {
    const pond = rectangleArea({ length: feet(one, "length"), width: feet(one, "width") });
    return [
      { key: "ft2", ours: valueIn(pond, "ft2"), within: 0.5 },
      { key: "acres", ours: valueIn(pond, "ac"), within: 0.005 },
    ];
  });
});
