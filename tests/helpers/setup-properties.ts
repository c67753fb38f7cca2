import fc from "fast-check";
import { runs } from "./runs.ts";

// `npm test` tries the same inputs every time, so that what it says of a tree does not change; `npm run fuzz` sends
// fresh seeds.
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 1), ...runs(100) });
