import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";

/** One of several views of the same thing. */
export interface Panel {
  /** Plain text: what the view is called. */
  readonly label: string;
  /** Markup. */
  readonly content: string;
}

/**
 * Writes several views of which a reader chooses one. On paper the chosen one is printed; without scripts all are shown, each
 * under its name.
 *
 * @param id - Of the control.
 * @param label - Plain text: what is chosen.
 * @param panels - In the order of the choice; those without content are left out.
 */
export function chooser(id: string, label: string, panels: readonly Panel[]): string {
  const filled = panels.filter(({ content }) => content !== "");
  if (filled.length === 0) return "";
  if (filled.length === 1) return filled[0]?.content ?? "";
  const control = element(
    "p",
    { class: "choice" },
    element("label", { for: id }, escapeMarkup(label)),
    " ",
    element("select", { id }, ...filled.map((panel) => element("option", {}, escapeMarkup(panel.label)))),
  );
  return element(
    "div",
    { class: "chooser" },
    control,
    ...filled.map((panel, i) =>
      element(
        "div",
        { class: i === 0 ? "panel shown" : "panel" },
        element("p", { class: "view" }, escapeMarkup(panel.label)),
        panel.content,
      ),
    ),
  );
}
