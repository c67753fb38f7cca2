// What the tests take from Vitest, without its runner: see in-process.mjs.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
);
setState({ assertionCalls: 0 }, expect);

let groups = [];
let tests = [];

export function describe(name, body) {
  groups.push(name);
  body();
  groups.pop();
}

export function it(name, run) {
  tests.push({ name: [...groups, name].join(" "), run });
}

const each = (register) => (rows) => (name, body) => {
  const isTable = rows.every(Array.isArray);
  for (const [i, row] of rows.entries())
    register(`${name} [${i}]`, () => (isTable ? body(...row) : body(row)));
};
it.each = each(it);
describe.each = each(describe);

export function afterAll() {}

/** The tests that loading a file registers, each under a name of its own. */
export function collect(load) {
  groups = [];
  tests = [];
  load();
  const seen = new Map();
  return tests.map(({ name, run }) => {
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return { name: times === 1 ? name : `${name} (${times})`, run };
  });
}
