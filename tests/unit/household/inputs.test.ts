import * as folder from "../../../src/household/index.ts";
import { callsOf, keepsInputRules } from "../../helpers/input-rules.ts";

keepsInputRules(callsOf(folder));
