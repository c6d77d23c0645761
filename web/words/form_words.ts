// The texts of the forms in the page's language: they come with the forms, not with the page. A second language is chosen
// here as in words.ts.
import { form } from "./form";

export const formWords: typeof form = form;
