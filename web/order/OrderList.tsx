// The order list, an article a line: what a yard is handed. How amounts are reckoned, and what is assumed, is unfolded.
import type { Article } from "../engine/contract";
import { Fold } from "../parts/Fold";
import { openField } from "../state/seeing";
import { saveText } from "../state/printing";
import { shown } from "../state/signals";
import { words } from "../words/words";

const w = words.order;

function beside(article: Article): string {
  const short = article.must_not_run_short ? w.mustNot(article.instead) : "";
  const brought = article.brought === undefined ? "" : w.brought(article.brought);
  return [brought, short, article.note].filter((part) => part !== "").join(" ");
}

function Line(props: { readonly article: Article; readonly priced: boolean }) {
  const { article } = props;
  return (
    <tr>
      <th scope="row">{article.called}</th>
      <td class="figure">{article.amount}</td>
      {props.priced ? <td class="figure">{article.cost?.text ?? ""}</td> : null}
      <td>{beside(article)}</td>
    </tr>
  );
}

/// Articles of one kind, under what they have in common.
function Group(props: { readonly articles: readonly Article[]; readonly priced: boolean }) {
  const { articles, priced } = props;
  return (
    <tbody>
      <tr class="group">
        <th scope="rowgroup" colSpan={priced ? 4 : 3}>
          {articles[0]?.group}
        </th>
      </tr>
      {articles.map((article) => (
        <Line key={article.id} article={article} priced={priced} />
      ))}
    </tbody>
  );
}

/// As they follow one another in the list.
function groupsOf(articles: readonly Article[]): readonly (readonly Article[])[] {
  const groups: Article[][] = [];
  for (const article of articles) {
    const last = groups.at(-1);
    if (last !== undefined && last[0]?.group === article.group) last.push(article);
    else groups.push([article]);
  }
  return groups;
}

function Money() {
  const prices = shown.value?.answer.order?.prices;
  if (prices === undefined) return null;
  const rows: readonly (readonly [string, string])[] = [
    [w.goods, prices.goods.text],
    [w.tax, prices.tax.text],
    [w.delivery, prices.delivery.text],
    [w.all, prices.all.text],
  ];
  return (
    <table class="wraps">
      <tbody>
        {rows.map(([name, sum]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td class="figure">{sum}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Reckoned() {
  const order = shown.value?.answer.order;
  const articles = (order?.articles ?? []).filter((article) => article.figures.length > 0);
  return (
    <table class="wraps">
      <tbody>
        {articles.flatMap((article) =>
          article.figures.map((figure) => (
            <tr key={article.id + figure.rule}>
              <th scope="row">{article.name}</th>
              <td class="figure">
                {figure.least === figure.most ? figure.most : w.fromTo(figure.least, figure.most)}
                {figure.chosen ? ` ${w.chosen}` : ""}
              </td>
              <td>{figure.says}</td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}

function Assumptions() {
  return (
    <ul>
      {(shown.value?.answer.order?.assumed ?? []).map((one) => (
        <li key={one.place + one.says}>
          {one.says} ({one.stated ? w.stated : w.unstated}){" "}
          <button type="button" class="small" onClick={() => openField(one.place)}>
            {w.change}
          </button>
        </li>
      ))}
    </ul>
  );
}

export function OrderList() {
  const order = shown.value?.answer.order;
  if (order === undefined) return null;
  const priced = order.prices !== undefined;
  return (
    <section class="result order-list" aria-label={w.label}>
      <h3>{w.label}</h3>
      <table class={priced ? "wraps articles priced" : "wraps articles"}>
        <thead>
          <tr>
            <th scope="col">{w.what}</th>
            <th class="figure" scope="col">
              {w.amount}
            </th>
            {priced ? (
              <th class="figure" scope="col">
                {w.cost}
              </th>
            ) : null}
            <th scope="col">{w.beside}</th>
          </tr>
        </thead>
        {groupsOf(order.articles).map((articles) => (
          <Group key={articles[0]?.id} articles={articles} priced={priced} />
        ))}
      </table>
      {priced ? <Money /> : null}
      {order.unpriced > 0 ? <p class="small soft">{w.unpriced(order.unpriced)}</p> : null}
      <button type="button" onClick={() => void saveText("order.csv", "text/csv", order.csv)}>
        {w.save}
      </button>
      <Fold name="order reckoned" title={w.reckoned}>
        {() => <Reckoned />}
      </Fold>
      <Fold name="order assumed" title={w.assumed}>
        {() => <Assumptions />}
      </Fold>
    </section>
  );
}
