import * as folder from "../../../src/output-rate/index.ts";
import { callsOf, keepsInputRules } from "../../helpers/input-rules.ts";

keepsInputRules(callsOf(folder));
