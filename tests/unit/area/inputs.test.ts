import * as folder from "../../../src/area/index.ts";
import { callsOf, keepsInputRules } from "../../helpers/input-rules.ts";

keepsInputRules(callsOf(folder));
