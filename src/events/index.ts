export type { Contact, Step } from "./contact.js";
