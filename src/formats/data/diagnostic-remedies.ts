/** What to do about each diagnostic, in a sentence or two. */
import type { DiagnosticCode } from '../../base/catalogue.ts';

export const diagnosticRemedies: Readonly<Record<DiagnosticCode, string>> = {
  'usage-unknown-command': 'Type leastcut alone: it lists the commands. The command comes first.',
  'usage-unknown-option':
    'Ask for the options of the command: leastcut survey --help, and likewise for the others.',
  'usage-option-value':
    'Give the option a value it takes; leastcut explain with the option’s name says which.',
  'usage-missing-input': 'Name the file with the readings, or - and pipe them in.',
  'usage-several-vehicles':
    'Choose one with --vehicle, or ask for --format ndjson, which is one record a vehicle.',
  'usage-unknown-vehicle':
    'Write the vehicle as the file does; leastcut read lists what the file holds.',
  'usage-unknown-panel':
    'Write a panel as leastcut template show names it, with left or right where there are two.',
  'usage-unknown-template': 'Choose one of leastcut template list.',
  'usage-unknown-topic': 'Type leastcut explain alone: it lists everything that can be asked for.',
  'price-too-large':
    'Look for a price with too many digits: they are in the least unit of the currency, such as pence.',
  'price-material':
    'Mend the name: leastcut methods materials lists what jobs use up. What every job is to be charged stands under "fixed"; what only the shop keeps there may stay.',
  'price-small':
    'Write prices in the least unit of the currency: 4500 for 45.00 in pounds, euros or dollars.',
  'price-pack-small':
    'Write what the whole pack holds, in its unit: "pack": 1000 for a litre in ml. A pack that is so small stays.',
  'percent-small':
    'Write 19 for 19 %. A per cent under one that is meant stays: it is reckoned with as it stands.',
  'price-coin-large':
    'Write cash_rounding_minor in the least unit of the currency: 5 for a coin of 0.05. Leave it out where nobody pays in coins.',
  'usage-unknown-field': 'Ask with --fields= alone: it lists the columns that there are.',
  'usage-unknown-method':
    'Choose from leastcut methods list. A combination is machine/pad/product.',
  'usage-unknown-trainee':
    'Write the name as the file does: in its column operator, its line Operator, or its own name.',
  'grade-not-read': 'Mend what the warnings before it say of the file, and grade the class again.',
  'grade-attempts':
    'Nothing, if both are of one trainee. Else give the files names of their own, or a column operator.',
  'grade-reference-again':
    'Keep the reference out of the folder of the trainees’ files. A trainee who handed it in has handed in a copy.',
  'grade-reference-doubted':
    'Read the reference again: each point anew, the probe lifted each time, and each figure as the gauge shows it.',
  'grade-other-vehicle':
    'Give each trainee’s readings of the car that the reference is of; --vehicle names it.',
  'grade-nameless': 'Write who took each reading in the column operator, or leave the column out.',
  'grade-no-consensus':
    'Name the file of an expert as reference, or give the files of more trainees.',
  'file-missing': 'Check the name and the folder you are in.',
  'file-unreadable': 'Name a file, not a folder, and one that you may read.',
  'keying-slip':
    'Look at the gauge, or read the point again, and mend the file. The value is taken as it stands.',
  'file-twice': 'Nothing, if that was meant. Else name the other file.',
  'output-exists': 'Choose another name, or let --force replace the file.',
  'output-is-input': 'Choose another name. An input is never changed.',
  'output-unwritable': 'Check that the folder exists, that you may write there, and the disk.',
  'output-ending': 'Ask for the form with --format; or give the file another name.',
  'substrate-contradicted':
    'Look under which panel the reading stands, and what the panel is made of; then mend the readings or the "substrate" in the job file.',
  'operators-differ':
    'Check both gauges on shims, and have both people read one panel with one gauge; then survey the readings of the one who reads right.',
  'gauge-stuck':
    'Read the bare plate and two shims: if the gauge shows what they are, read the car again; if not, put in a new battery or have the gauge mended.',
  'rates-twice':
    'Take one of the two out of the rates file; if both were made, tell them apart by their panel.',
  'rates-unknown':
    'Mend the name, or describe the machine, pad or product in the shop file: then it counts.',
  'rates-not-owned':
    'Nothing, if the shop no longer has it. Otherwise list its machine, pad and product in the shop file.',
  'rates-unlikely':
    'Look for mil written as µm, a slip of the decimal, sets left out, or polish left on the panel.',
  'gauge-failed':
    'Read the car with a gauge that passes; or have this one put right, and check it.',
  'gauge-undecided':
    'Read each shim five to ten times, on better known shims if there are any, and check again.',
  'gauge-drifted':
    'Do not compare readings from before with those from after: let the gauge settle, read both anew.',
  'gauge-not-adjusted':
    'Look whether the shims were mixed up, and check again; a gauge that no line fits wants service.',
  'encoding-unknown': 'Open the file in the program it came from and save it as CSV in UTF-8.',
  'file-other-kind':
    'Name the file where it belongs, as the hint says, and the table that is wanted in its place.',
  'file-empty': 'Export it again; the gauge or its program wrote nothing.',
  'quote-unclosed': 'Close the quote with a second one, or take the first away.',
  'delimiter-ambiguous':
    'Use one delimiter throughout, and put cells that hold the other in quotes.',
  'header-missing': 'Add a first line that names the columns, at least panel and reading_um.',
  'column-missing': 'Name the column as asked; the message lists what was found.',
  'column-unknown': 'Nothing, if the column does not matter. Else name it as the tool knows it.',
  'column-unnamed': 'Give the column a name, or delete it.',
  'column-repeated': 'Rename or remove one of the two.',
  'statistics-left-out': 'Nothing. Means and counts are worked out anew from the readings.',
  'spot-method-unknown':
    'Write the id that leastcut methods list shows, or add it to the shop file.',
  'spot-disagrees':
    'One spot, one trial: give another combination, or further sets, a spot name of their own.',
  'spot-in-two-files':
    'If it is one trial, keep it in one of the files; if they are two, give each a spot name of its own.',
  'spot-doubted':
    'Correct the readings, their unit, the sets, the panel or the vehicle; a place worked on is one spot, with all its sets, and a trial has one name.',
  'spot-mark-twice': 'Give each mark one row, with the mean of its readings.',
  'spot-keying-slip':
    'Correct the reading; if the gauge did show so, leave both readings of the mark empty.',
  'spot-film-gained':
    'Check the gauge, wipe off polish and wax, let the panel cool, and read the mark again.',
  'spots-mismatch': 'Name the vehicle with --vehicle; each vehicle has its own test spots.',
  'compare-one-visit': 'Name two files or more, the earliest first.',
  'compare-vehicles-differ':
    'Give files of one vehicle; of several in a file, name it with --vehicle.',
  'compare-film-gained':
    'Give the earlier file first. Check the gauge on shims, wipe off wax and polish, let the panel cool, and read the same places again. If the panel was painted since, say so in the job.',
  'compare-common-shift':
    'Read shims and a place that no pad touched, as they were read before the work; if the gauge reads right, find out what took the film, or what came on.',
  'compare-visit-in-parts':
    'Put files of one visit into one: leastcut read a.csv b.csv --format csv -o visit.csv; then compare that.',
  'compare-spots-left-out': 'Name the test spots with --spots, as for the plan.',
  'compare-not-recorded':
    'Read the panels that are named again, or correct the value that looks keyed wrongly, and compare once more.',
  'compare-worked-unread':
    'Read the panels that are named and compare once more: what is measured takes the place of what was foretold. Of a panel that was not worked say 0 sets with --worked.',
  'compare-record-left-out': 'Name the film record with --film-record, as for the plan.',
  'compare-plan-of-others':
    'Give the plan that was made from these readings, with the same nearside.',
  'stated-clear-too-thick':
    'State the clear alone under "clear_um": it lies over the base coat and the primer, and is less than what the gauge reads.',
  'stated-layers-apart':
    'The clear and what lies under it add up to what the gauge reads, and a clear that was read is that of its panel and tells of the others. Correct "clear_um" or "under_um", read the clear again, or leave one out.',
  'date-in-future':
    'Look at the year first. If the day is right, as of a quote that is to go out later, nothing is to be done.',
  'quote-before-read':
    'Give the day of the quote with --date; if the clock of the gauge was wrong, correct the days of the readings.',
  'compare-files-order':
    'Name the files in the order of their visits; a shell’s * puts after before before.',
  'compare-visit-again':
    'Nothing is to be done where the record has the right day; else correct the day there.',
  'compare-visit-within':
    'Compare from the readings after that visit on, so that each visit is told by itself.',
  'compare-visit-twice':
    'Compare the readings before and after each visit by themselves; take a visit that was read anew off the record before it is written again.',
  'compare-day-differs':
    'Give the day of the work with --date, or correct the days of the readings.',
  'compare-points-swapped':
    'Look in the files whether two panels were exchanged, or points numbered from the other end; correct that, or read the panels again.',
  'compare-visit-earlier':
    'Look at the day that --date says, and at those of the record; if they are right, nothing is to be done.',
  'compare-not-marked':
    'Mark points before the work and say so in a column "marked"; if they were marked, give --marked.',
  'compare-nothing-shared':
    'Name the readings of one vehicle before and after the work; call a panel and its marked points alike in both files.',
  'worked-mismatch':
    'Name each step that the plan has on the panel, by its number or its machine/pad/product, with the sets that were worked, 0 for none.',
  'worked-unplanned': 'Nothing, if it was worked; else correct the row, or remove it.',
  'plan-mismatch': 'Give the plan of this vehicle, or readings of the vehicle of the plan.',
  'row-too-long': 'Look for a decimal comma or a comma in a note: put that cell in quotes.',
  'row-too-short': 'Add the missing cells; an empty one keeps its comma.',
  'comment-or-row': 'Delete the line, or the # before it.',
  'unit-missing':
    'Say it in the header (reading_um or reading_mil) or with --reading-unit um or mil.',
  'unit-unknown': 'Give readings in µm or mil.',
  'unit-conflict': 'Keep the statement that is right, and drop the other.',
  'unit-doubtful':
    'Look at the gauge: if it shows mil, say so in the header or with --reading-unit mil.',
  'reading-ambiguous':
    'Write the number without a thousands mark, or fewer digits after the decimal mark.',
  'reading-not-a-number': 'Correct the cell, or leave it empty where there is no reading.',
  'reading-missing': 'Nothing, if no reading was taken there.',
  'reading-implausible':
    'Look at the number again: a decimal mark may be missing. Below 0, set the zero of the gauge and measure anew.',
  'reading-doubted': 'Take the row out if its reading does not count; else nothing.',
  'readings-altered': 'Do the sum in the cells, or leave them if it is done, and delete the line.',
  'cell-invalid': 'Write one of the values that the message names, or leave the cell empty.',
  'decisions-mismatch':
    'Mend the decisions file, or say with a flag how this file is to be read: flags win over it.',
  'files-one-vehicle':
    'Nothing, if it is one vehicle. Else survey the files one at a time, or add a column "vehicle".',
  'files-two-vehicles':
    'Survey the files one at a time, or add a column "vehicle" to each. If it is one vehicle, look for a wrong unit.',
  'no-readings': 'Check that this is the right file, and its column of readings.',
  'panel-missing': 'Name the panel in every row.',
  'panel-unknown': 'Write the panel as the template names it; leastcut template show lists them.',
  'panel-ambiguous': 'Say left or right, front or rear.',
  'panel-names-together':
    'Nothing, if they are one panel; else name each as leastcut template show does.',
  'panel-unmatched': 'Nothing, to read. To survey or plan, the panels must be those of a template.',
  'template-unusual': 'Measure again. If it is right, nothing: the template is taken as it stands.',
  'sheet-nothing-more': 'Nothing. For every point of the panel, ask for the sheet without --for.',
  'template-undecided': 'Name the template with --template.',
  'defect-graded-twice':
    'Keep one row of a defect for each panel. Of two places on it, say under extent where each is.',
  'defect-unknown': 'Write one of the defects that leastcut explain defects names.',
  'json-syntax': 'Mend the place that the caret shows. JSON has no comments, no last comma.',
  'json-duplicate-key': 'Keep one of the two.',
  'settings-unknown-key':
    'Correct the key; leastcut explain with a key says what it means and where it stands.',
  'settings-invalid': 'Write a value that the message names.',
  'job-mismatch': 'Give the job of this vehicle, or mend its vehicle id.',
  'settings-panel-unknown':
    'Write the panel as leastcut template show names it; any usual name of it will do.',
  'settings-panel-ambiguous': 'Say which one: left or right, front or rear.',
  'settings-panel-twice': 'Keep one of the two names, and say all of the panel under it.',
  'film-record-older':
    'Leave out --film-record where the job names the record of the last visit, or give that one.',
  'film-record-contradicts':
    'Make one record of both, with all visits, and name it in the job as film_record.',
  'film-record-mismatch':
    'Name the film record of this vehicle in the job, or mend the vehicle in the record.',
  'film-record-differs':
    'Leave the record out if it is of another car; if it is of this one, read again at the points that it names.',
  'batch-column-unknown':
    'Mend the name of the column, or take the column out: batch --help lists them.',
  'batch-job-incomplete': 'Give each job a name and the file of its readings, or remove the row.',
  'batch-job-twice': 'Give each job a name of its own: its record is found by it.',
  'batch-value': 'Write in the list what the option of that name takes, or leave the cell empty.',
  'batch-empty':
    'Write a row for each job, or put the files of readings into the folder that is named.',
  'batch-result':
    'Nothing has to be done: the file is left alone. Kept in a folder of its own it is not told every time.',
  'batch-left-alone':
    'Export what holds readings as CSV, tab-separated or plain text; run a batch of its own over a folder within; call a job file, defects, spots or a gauge file after the readings it belongs to.',
  'stage-order':
    'Move the stage that is named to where the reason asks for it, or leave "order" out: the usual order keeps every rule.',
  'init-exists': 'Name another folder, or move the files that are there away first.',
  'settings-schema': 'Add the line that the hint shows: it says what kind of file this is.',
  'environment-unknown':
    'Correct the name, or take the variable away; leastcut doctor lists those that count.',
  'character-lost':
    'Say the unit with --reading-unit, or export the file anew as UTF-8 without a pipe in between.',
  'statistics-disagree':
    'Look at the row that is named: a wrong decimal mark or a lost reading makes a mean differ.',
  'statistics-unnamed': 'Take the means out, or name their column or row: Mean.',
  'header-repeated': 'Nothing: the line is passed over.',
  'line-left-out': 'Nothing, if the line says nothing of the readings.',
  'table-left-out': 'Nothing, if it is no table of readings; else give it a file of its own.',
  'tables-apart':
    'Say in each row, or in a line above each table, which vehicle or panel it is of.',
  'row-above-header':
    'Move the line with the names of the columns to the top, or take the row out.',
  'table-repeated': 'Take one of the two copies out.',
  'visits-together':
    'Give each visit a file of its own: compare says what came off between them. Name two vehicles in a column vehicle; number a second round in a column repeat.',
  'days-several': 'Give each day a file of its own, if paint came off between them.',
  'points-alike': 'Write one point one way: 1, or 01.',
  'reading-over-range': 'Read the point again, if the panel can be read there.',
  'reading-error': 'Read the point again, or mend the formula of the spreadsheet.',
  'reading-deleted': 'Nothing, if it was meant to be left out.',
  'reading-became-date':
    'Import the export anew with this column as text, or type the number of the gauge.',
  'environment-invalid': 'Give the variable a value that its option takes, or take it away.',
};
