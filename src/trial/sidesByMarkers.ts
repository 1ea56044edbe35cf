import { type Contact, type Events, type SideMethod, sidesFromMarkers } from "../events/index.js";
import type { FootTrack, GroundReaction, GroundTrack } from "../force/index.js";
import type { MarkerSet, Side } from "../recording/index.js";
import type { Caution } from "../units/index.js";

/** Events whose sides may have been told by markers. */
export interface ToldEvents extends Omit<Events, "settings"> {
  readonly settings: Omit<Events["settings"], "sides"> & { readonly sides: SideMethod | "markers" };
}

/**
 * The events with the foot of each contact by the markers of both feet, where the recording has them with their heights and
 * names no foot itself. A contact that markers do not tell keeps its place in the alternation of the others.
 */
export function sidesByMarkers(ground: GroundReaction, events: Events, firstFoot: Side | null): ToldEvents {
  const { left, right } = ground.feet ?? {};
  const named = events.settings.sides === "plates" || events.settings.sides === "recorded events";
  if (left === undefined || right === undefined || named || events.contacts.length === 0) return events;
  const markers = markersOf(ground, { left, right });
  if (markers === null) return events;
  const { contacts, partialContacts } = events;
  const feet = { left: NAMES.left, right: NAMES.right };
  const told = sidesFromMarkers([...contacts, ...partialContacts], markers, feet, { ground });
  const before = [...contacts, ...partialContacts];
  const sides = told.contacts.map(({ side }) => side);
  const known = sides.filter((side) => side !== "unknown").length;
  if (known === 0) return { ...events, cautions: [...events.cautions, ...told.cautions] };
  const agree = sides.filter((side, k) => side !== "unknown" && side === before[k]?.side).length;
  const exchanged = 2 * agree < known;
  const after = told.contacts.map((contact, k): Contact => {
    if (contact.side !== "unknown") return contact;
    const { side } = before[k] as Contact;
    return { ...contact, side: exchanged ? opposite(side) : side };
  });
  const cautions: Caution[] = [
    ...events.cautions.filter(({ code }) => !code.startsWith("sides-")),
    ...told.cautions,
  ];
  const first = after[0]?.side;
  if (firstFoot !== null && first !== firstFoot) {
    cautions.push({
      code: "sides-uncertain",
      message: `the first foot is stated as ${firstFoot}, but the markers say ${first}; the markers were followed`,
    });
  }
  return {
    contacts: after.slice(0, contacts.length),
    partialContacts: after.slice(contacts.length),
    settings: { ...events.settings, sides: "markers" },
    cautions,
  };
}

const NAMES = {
  left: ["left heel", "left toe"],
  right: ["right heel", "right toe"],
} as const;

/** The feet as markers on the samples of the force; `null` where heights are missing. */
function markersOf(ground: GroundReaction, feet: Readonly<Record<Side, FootTrack>>): MarkerSet | null {
  const marker = (name: string, { forward, right, up }: GroundTrack) =>
    up === undefined ? [] : [{ name, forward, right, up }];
  const markers = (["left", "right"] as const).flatMap((side) => [
    ...marker(NAMES[side][0], feet[side].heel),
    ...marker(NAMES[side][1], feet[side].toe),
  ]);
  if (markers.length < 4) return null;
  return { sampleRate: ground.sampleRate, startTime: ground.startTime, markers };
}

function opposite(side: Contact["side"]): Contact["side"] {
  return side === "unknown" ? side : side === "left" ? "right" : "left";
}
