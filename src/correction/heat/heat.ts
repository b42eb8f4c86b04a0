/**
 * What friction does to the panel under a moving pad.
 *
 * The pad turns μ·p·v into heat (W/m²), a share of which goes into the panel. Metal is so thin and
 * conducts so well that the whole sheet warms at once; plastic warms at its surface only, as a
 * half-space does. Each pass over a spot is a short contact, and between contacts metal cools to the
 * air. Sources: Newton's law of cooling; half-space under constant flux, Carslaw & Jaeger, Conduction
 * of Heat in Solids (1959), 2.9.
 */
import {
  type DegreesCelsius,
  degreesCelsius,
  type Kelvins,
  kelvins,
  type Seconds,
  seconds,
} from '../../base/units.ts';
import type { CorrectionModel, Machine } from '../removal/catalogue.ts';
import { contactPressure, contactTime, setTime, slidingSpeed } from '../removal/removal-rate.ts';
import type { HeatModel, Skin } from './heat-model.ts';

/** Heat into the panel under the pad, W/m²: share·μ·p·v. */
export const panelFlux = (
  machine: Machine,
  { friction, panelShare }: Pick<HeatModel, 'friction' | 'panelShare'>,
): number => panelShare * friction * contactPressure(machine) * slidingSpeed(machine);

/**
 * Warming of a spot after `contact` under a pad that stands on it: q·t/(ρcδ) for a metal sheet,
 * 2q·√(t/π)/e for plastic. Air cools neither under the pad.
 */
export const standingWarming = (
  flux: number,
  contact: Seconds,
  skin: Skin,
  model: HeatModel,
): Kelvins =>
  kelvins(
    skin === 'plastic'
      ? (2 * flux * Math.sqrt(contact / Math.PI)) / model.plasticEffusivity
      : (flux * contact) / sheetHeat(skin, model),
  );

/** How long a pad may stand until the spot has warmed by `rise`: the same, solved for t. */
export const standingTime = (flux: number, rise: Kelvins, skin: Skin, model: HeatModel): Seconds =>
  seconds(
    skin === 'plastic'
      ? Math.PI * ((rise * model.plasticEffusivity) / (2 * flux)) ** 2
      : (rise * sheetHeat(skin, model)) / flux,
  );

const sheetHeat = (skin: Exclude<Skin, 'plastic'>, model: HeatModel): number =>
  skin === 'steel' ? model.steelSheet : model.aluminiumSheet;

/** The rhythm in which a spot meets the pad. */
export type Working = {
  readonly sets: number;
  /** Between two sets of one section, for wiping and cleaning the pad. */
  readonly pause: Seconds;
};

type Removal = CorrectionModel['removal'];
type HeatOfWork = { readonly removal: Removal; readonly heat: HeatModel };

/** A spot meets the pad once a pass; a broken number of passes counts as the next whole one. */
const passesOf = ({ passes }: Removal): number => Math.ceil(passes);

const passContact = (machine: Machine, removal: Removal): Seconds =>
  seconds(contactTime(machine, removal) / passesOf(removal));

/** Warming of a spot in one pass, from the temperature it has. */
export const passWarming = (machine: Machine, { removal, heat }: HeatOfWork, skin: Skin): Kelvins =>
  standingWarming(panelFlux(machine, heat), passContact(machine, removal), skin, heat);

/**
 * The warmest that a spot gets in so many sets, at the end of whichever pass: what the passes so far
 * left in it, on top of a panel that itself goes from where it started towards the room. Within a set
 * the pause before that set is not counted, so that it is rather overstated.
 */
export function warmest(
  machine: Machine,
  model: HeatOfWork,
  skin: Skin,
  working: Working,
): DegreesCelsius {
  const perPass = passWarming(machine, model, skin);
  const contact = passContact(machine, model.removal);
  let most: number = model.heat.start;
  let left = 0;
  for (const ago of passTimes(machine, model, working)) {
    left += leftAfter(ago, contact, skin, model.heat);
    most = Math.max(most, panelAfter(ago, skin, model.heat) + perPass * left);
  }
  return degreesCelsius(most);
}

/** A panel left alone: metal goes to the room as exp(−h·t/(ρcδ)); of plastic that is left out. */
const panelAfter = (age: number, skin: Skin, heat: HeatModel): number =>
  skin === 'plastic'
    ? heat.start
    : heat.room +
      (heat.start - heat.room) * Math.exp((-heat.cooling * age) / sheetHeat(skin, heat));

/**
 * Warming of a spot at the end of the last pass of so many sets. Each pass is one contact; what it
 * left has cooled since, in metal as exp(−h·t/(ρcδ)), in plastic into the depth (two half-space
 * solutions a contact apart; the air's share is left out, so that plastic is rather overstated).
 */
export function workingWarming(
  machine: Machine,
  model: HeatOfWork,
  skin: Skin,
  working: Working,
): Kelvins {
  const contact = passContact(machine, model.removal);
  const left = passTimes(machine, model, working).map((ago) =>
    leftAfter(ago, contact, skin, model.heat),
  );
  return kelvins(passWarming(machine, model, skin) * left.reduce((sum, share) => sum + share, 0));
}

/** Seconds from the first pass to each pass of so many sets; likewise from each back to the last. */
function passTimes(
  machine: Machine,
  { removal }: HeatOfWork,
  { sets, pause }: Working,
): readonly number[] {
  const passes = passesOf(removal);
  const area = machine.motion.kind === 'hand' ? machine.motion.handArea : removal.section;
  const setSeconds = 60 * setTime(machine, area, removal);
  const times: number[] = [];
  for (let i = 0; i < sets * passes; i += 1) {
    times.push(Math.floor(i / passes) * pause + (i * setSeconds) / passes);
  }
  return times;
}

/** Share of a contact's warming that is left when it has been over for `age` seconds. */
function leftAfter(age: number, contact: Seconds, skin: Skin, model: HeatModel): number {
  return skin === 'plastic'
    ? (Math.sqrt(age + contact) - Math.sqrt(age)) / Math.sqrt(contact)
    : Math.exp((-model.cooling * age) / sheetHeat(skin, model));
}

export type HeatVerdict = 'cool' | 'caution' | 'stop';

/** What a temperature asks for; plastic has a limit of its own besides. */
export function heatVerdict(
  temperature: DegreesCelsius,
  skin: Skin,
  { caution, stop, plasticStop }: Pick<HeatModel, 'caution' | 'stop' | 'plasticStop'>,
): HeatVerdict {
  const most = skin === 'plastic' ? Math.min(stop, plasticStop) : stop;
  if (temperature > most) return 'stop';
  return temperature > caution ? 'caution' : 'cool';
}
