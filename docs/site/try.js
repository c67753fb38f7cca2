// "Try it" on the page of a function: a call as JavaScript writes it, read here and not by the engine, since the page's policy
// allows no code from text. It has numbers, texts, lists, objects and calls of the library's functions, and nothing else.
(() => {
  const SIGN =
    /\s*(?:([{}[\](),:.])|("(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*')|(-?(?:\d[\d_]*\.?\d*|\.\d+)(?:e[+-]?\d+)?)|([A-Za-z_$][\w$]*))/iuy;
  const WORDS = { true: true, false: false, null: null, undefined };

  /** Reads a call and works it out, with these functions to call. */
  function worked(text, functions) {
    let at = 0;
    let token;
    next();
    const value = expression();
    if (token !== undefined) throw unreadable();
    return value;

    function next() {
      const rest = text.slice(at).trim();
      if (rest === "" || rest === ";") {
        token = undefined;
        return;
      }
      SIGN.lastIndex = at;
      const found = SIGN.exec(text);
      token = undefined;
      if (found === null) throw unreadable();
      token = { start: at, sign: found[1], string: found[2], number: found[3], name: found[4] };
      at = SIGN.lastIndex;
    }

    function unreadable() {
      const rest = text.slice(token?.start ?? at).trim();
      return new Error(
        rest === "" ? "Something is missing at the end." : `Can't read on from here: ${rest.slice(0, 40)}`,
      );
    }

    function take(sign) {
      if (token?.sign !== sign) throw unreadable();
      next();
    }

    function expression() {
      let value = first();
      while (token?.sign === "." || token?.sign === "[") {
        const isName = token.sign === ".";
        next();
        const key = isName ? token?.name : token?.number;
        if (key === undefined) throw unreadable();
        next();
        if (!isName) take("]");
        value =
          value !== null && typeof value === "object" && Object.hasOwn(value, key) ? value[key] : undefined;
      }
      return value;
    }

    function first() {
      const { sign, string, number, name } = token ?? {};
      if (sign === "[") return list("]", expression);
      if (sign === "{") return Object.fromEntries(list("}", member));
      if (string !== undefined) {
        next();
        const inner = string.slice(1, -1).replace(/\\'/g, "'");
        return JSON.parse(string[0] === '"' ? string : `"${inner.replace(/"/g, '\\"')}"`);
      }
      if (number !== undefined) {
        next();
        return Number(number.replaceAll("_", ""));
      }
      if (name === undefined) throw unreadable();
      if (Object.hasOwn(WORDS, name)) {
        next();
        return WORDS[name];
      }
      const called = Object.hasOwn(functions, name) ? functions[name] : undefined;
      if (called === undefined) throw new Error(`There is no ${name} here.`);
      next();
      return typeof called === "function" ? called(...list(")", expression, "(")) : called;
    }

    function list(end, item, start = token?.sign) {
      take(start);
      const items = [];
      while (token?.sign !== end) {
        items.push(item());
        if (token?.sign !== end) take(",");
      }
      next();
      return items;
    }

    function member() {
      const key = token?.name ?? token?.number ?? token?.string?.slice(1, -1);
      if (key === undefined) throw unreadable();
      next();
      take(":");
      return [key, expression()];
    }
  }

  /** A result as it is read best: text as text, anything else as data. */
  function shown(value) {
    if (typeof value === "string") return value;
    const seen = new WeakSet();
    const plain = (_, inner) => {
      if (typeof inner === "function") return "(a function)";
      if (typeof inner !== "object" || inner === null) return inner;
      if (seen.has(inner)) return "(as above)";
      seen.add(inner);
      return inner;
    };
    return JSON.stringify(value, plain, 2) ?? String(value);
  }

  let library;
  /** The library as built, loaded when it is first asked for. */
  function loaded(base) {
    library ??= new Promise((resolve, reject) => {
      const script = document.createElement("script");
      script.src = `${base}assets/library.js`;
      script.addEventListener("load", () => resolve(globalThis.swathToSpoon));
      script.addEventListener("error", () => reject(new Error("The library couldn't be loaded.")));
      document.head.append(script);
    });
    return library;
  }

  for (const form of document.querySelectorAll(".try-it")) {
    const { module } = form.dataset;
    const base = document.documentElement.dataset.base;
    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      const output = form.querySelector("output");
      try {
        const modules = await loaded(base);
        // The page's own functions first: the working of a function has its name.
        const functions = Object.assign({}, ...Object.values(modules), modules[module]);
        output.value = shown(worked(form.querySelector("textarea").value, functions));
      } catch (error) {
        const issues = error.issues?.map(({ path, message }) =>
          path === "" ? message : `${path}: ${message}`,
        );
        output.value = issues?.join("\n") ?? error.message;
      }
    });
  }
})();
