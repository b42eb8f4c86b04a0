/** What is to be said of a panel on which a place was worked deeper at a visit on record. */
import { type Remark, remark } from '../base/remark.ts';
import { says, um } from '../base/sentence.ts';
import type { PanelFacts, PlaceWorked } from './film-model.ts';

type RecordedFacts = Pick<PanelFacts, 'recorded' | 'paintedDaysAgo'>;

/** None of a panel that was painted since: what went is no part of its paint. */
export const unreadPlaces = ({
  recorded,
  paintedDaysAgo,
}: RecordedFacts): readonly PlaceWorked[] =>
  paintedDaysAgo === null ? (recorded?.places ?? []) : [];

/** A kind of defect in words, of which a record or a plan has the id. */
export const defectText = (id: string): string => id.replaceAll('-', ' ');

export const placeNotes = (facts: RecordedFacts): readonly Remark[] =>
  unreadPlaces(facts).map(placeNote);

const placeNote = ({ date, defect, median, high }: PlaceWorked): Remark =>
  remark(
    'place-on-record',
    says`${date === null ? 'at this visit' : `on ${date}`} a spot at ${defectText(defect)} was to take ${um(median)} more (up to ${um(high)}) at one place, which nobody has read since: keep off it till it is read; what may go is told of the rest of the panel`,
    median,
  );
