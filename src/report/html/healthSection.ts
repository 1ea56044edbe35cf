import { element } from "../markup/element.js";
import { HEALTH_CAUTIONS } from "../wording/healthCautions.js";
import { bulletList } from "./bulletList.js";

/** Writes the health cautions. */
export function healthSection(): string {
  return element("section", { class: "health" }, element("h2", {}, "Health"), bulletList(HEALTH_CAUTIONS));
}
