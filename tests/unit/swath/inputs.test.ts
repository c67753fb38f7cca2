import * as folder from "../../../src/swath/index.ts";
import { callsOf, keepsInputRules } from "../../helpers/input-rules.ts";

keepsInputRules(callsOf(folder));
