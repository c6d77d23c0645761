// The page built in the made-up language (marked.ts), for language.spec.ts.
import type { Plugin } from "vite";
import page from "../../vite.config.ts";

/// The files that choose the page's language, and what each chooses.
const kChosen: Readonly<Record<string, string>> = { "/words/words.ts": "english", "/words/form_words.ts": "form" };

export function markTexts(): Plugin {
  return {
    name: "mark-texts",
    enforce: "pre",
    transform(code, id) {
      const [, texts = ""] = Object.entries(kChosen).find(([file]) => id.endsWith(file)) ?? [];
      if (texts === "") return undefined;
      if (!code.includes(`= ${texts};`))
        throw new Error(`${id} no longer chooses its language where this looks for it`);
      const put = code.replace(`= ${texts};`, `= marked(${texts});`);
      return `import { marked } from "../tests/browser/marked.ts";\n${put}`;
    },
  };
}

export default { ...page, plugins: [markTexts(), ...(page.plugins ?? [])] };
