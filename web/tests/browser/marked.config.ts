// The page built in the made-up language (marked.ts), for language.spec.ts.
import type { Plugin } from "vite";
import page from "../../vite.config.ts";

const kTexts = "= english;";

export function markTexts(): Plugin {
  return {
    name: "mark-texts",
    enforce: "pre",
    transform(code, id) {
      if (!id.endsWith("/words/words.ts")) return undefined;
      if (!code.includes(kTexts)) throw new Error("words.ts no longer chooses its language where this looks for it");
      return `import { marked } from "../tests/browser/marked.ts";\n${code.replace(kTexts, "= marked(english);")}`;
    },
  };
}

export default { ...page, plugins: [markTexts(), ...(page.plugins ?? [])] };
