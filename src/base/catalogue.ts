/**
 * Every diagnostic the tool can give: its code, what kind of trouble it is (which decides the exit
 * code) and what it means in plain words. One folder per code stands under `test/errors`.
 */
export type DiagnosticKind =
  /** A wrong command line: exit 2. */
  | 'usage'
  /** An input that cannot be read without guessing: exit 65. */
  | 'data'
  /** A named file that is missing or unreadable: exit 66. */
  | 'input-file'
  /** An output that cannot be written or would overwrite: exit 73. */
  | 'output'
  /** A settings file or value that is not valid: exit 78. */
  | 'settings'
  /** A remark that stops nothing. */
  | 'remark';

export type CatalogueEntry = { readonly kind: DiagnosticKind; readonly meaning: string };

export const diagnosticCatalogue = {
  'usage-unknown-command': { kind: 'usage', meaning: 'The first word is not a command.' },
  'usage-unknown-option': { kind: 'usage', meaning: 'An option is not known to the command.' },
  'usage-option-value': { kind: 'usage', meaning: 'An option was given a value it cannot take.' },
  'usage-missing-input': {
    kind: 'usage',
    meaning: 'No input file was named and nothing was piped.',
  },
  'usage-several-vehicles': {
    kind: 'usage',
    meaning: 'The input holds several vehicles and the output can hold one.',
  },
  'usage-unknown-vehicle': {
    kind: 'usage',
    meaning: 'No reading belongs to the vehicle asked for.',
  },
  'usage-unknown-panel': {
    kind: 'usage',
    meaning: 'A panel named by an option is not on the template.',
  },
  'usage-unknown-template': {
    kind: 'usage',
    meaning: 'There is no vehicle template of that name.',
  },
  'usage-unknown-topic': {
    kind: 'usage',
    meaning: 'A word to be explained is not known.',
  },
  'price-too-large': {
    kind: 'settings',
    meaning: 'The prices of the shop make a sum that cannot be written down exactly.',
  },
  'price-material': {
    kind: 'settings',
    meaning:
      'The price list has a price for something that no job uses, so that nothing is ever charged for it.',
  },
  'price-small': {
    kind: 'remark',
    meaning: 'An hour costs less than one unit of the currency: prices are in its least unit.',
  },
  'price-pack-small': {
    kind: 'remark',
    meaning: 'A pack of the price list holds so little that a job would take many of them.',
  },
  'percent-small': {
    kind: 'remark',
    meaning:
      'A rate of tax, a mark-up, a discount or a deposit is under one per cent, as 0.19 written for 19 is.',
  },
  'price-coin-large': {
    kind: 'remark',
    meaning: 'The least coin is so large that rounding to it changes a price by much.',
  },
  'usage-unknown-field': {
    kind: 'usage',
    meaning: 'A column asked for by --fields is not one of the table.',
  },
  'usage-unknown-method': {
    kind: 'usage',
    meaning: 'There is no machine, pad, product or combination of that name.',
  },
  'substrate-contradicted': {
    kind: 'remark',
    meaning:
      'The readings say of a panel that it is of another substrate than the job says, or of two: the job is believed, else the template.',
  },
  'operators-differ': {
    kind: 'remark',
    meaning:
      'Two people, or two files of one visit, read the same points differently by more than chance: the means count as that much less sure.',
  },
  'gauge-stuck': {
    kind: 'remark',
    meaning:
      'All readings of a car are one value, which paint and a gauge in order hardly ever give: the readings stand, and say nothing of how even the film is.',
  },
  'rates-twice': {
    kind: 'remark',
    meaning: 'An observation stands in a rates file twice, the same in all: it counts once.',
  },
  'rates-unknown': {
    kind: 'remark',
    meaning: 'An observation is of a machine, pad or product that nothing is known of: left out.',
  },
  'rates-not-owned': {
    kind: 'remark',
    meaning:
      'An observation is of a combination that the shop does not have; it tells of its paint.',
  },
  'rates-unlikely': {
    kind: 'remark',
    meaning: 'An observation in a rates file is so far from what is usual that a slip is likelier.',
  },
  'gauge-failed': {
    kind: 'remark',
    meaning: 'The gauge is off by more than its maker permits: its readings are trusted less.',
  },
  'gauge-undecided': {
    kind: 'remark',
    meaning:
      'The check of the gauge could not tell whether it keeps within what its maker permits.',
  },
  'gauge-drifted': {
    kind: 'remark',
    meaning: 'The gauge moved between the check before the work and the one after it.',
  },
  'gauge-not-adjusted': {
    kind: 'remark',
    meaning: 'An adjustment was asked for, and the checks do not bear one.',
  },
  'grade-not-read': {
    kind: 'remark',
    meaning: 'The file of a trainee cannot be read: this one is not graded, the others are.',
  },
  'grade-attempts': {
    kind: 'remark',
    meaning: 'Two files have one name and name nobody: they are taken as attempts of one trainee.',
  },
  'grade-reference-again': {
    kind: 'remark',
    meaning:
      'A file of a trainee holds the readings of the reference itself: nobody is graded by it.',
  },
  'grade-reference-doubted': {
    kind: 'remark',
    meaning: 'Values of the reference look written down and not read at the car.',
  },
  'grade-other-vehicle': {
    kind: 'data',
    meaning: 'A survey to be graded is of another vehicle than the reference, or of several.',
  },
  'grade-nameless': {
    kind: 'data',
    meaning: 'Some readings name who took them and others in the same file do not.',
  },
  'grade-no-consensus': {
    kind: 'data',
    meaning: 'Too few trainees read the same panel for the class to be its own reference.',
  },
  'usage-unknown-trainee': {
    kind: 'usage',
    meaning: 'A trainee named by an option has no file in the class.',
  },
  'keying-slip': {
    kind: 'remark',
    meaning: 'A value is ten times its neighbours, or a tenth: it may be keyed wrongly.',
  },
  'file-missing': { kind: 'input-file', meaning: 'A named file does not exist.' },
  'file-unreadable': { kind: 'input-file', meaning: 'A named file exists and cannot be read.' },
  'file-twice': { kind: 'remark', meaning: 'Two inputs hold the same bytes: they are read once.' },
  'output-exists': { kind: 'output', meaning: 'The output file exists; --force would replace it.' },
  'output-is-input': { kind: 'output', meaning: 'The output file is one of the inputs.' },
  'output-unwritable': { kind: 'output', meaning: 'The output file cannot be written.' },
  'output-ending': {
    kind: 'remark',
    meaning: 'The output is called as another form than the text that it holds.',
  },
  'encoding-unknown': {
    kind: 'data',
    meaning: 'The bytes of the file are not text in an encoding that can be told for certain.',
  },
  'character-lost': {
    kind: 'data',
    meaning: 'A letter was lost before the file came here, such as the µ of µm.',
  },
  'file-other-kind': {
    kind: 'data',
    meaning: 'The file is of another kind than is wanted there, such as a job file for readings.',
  },
  'file-empty': { kind: 'data', meaning: 'The file holds nothing but blanks.' },
  'quote-unclosed': { kind: 'data', meaning: 'A quoted cell is never closed.' },
  'delimiter-ambiguous': {
    kind: 'data',
    meaning: 'More than one delimiter fits the file equally well.',
  },
  'header-missing': { kind: 'data', meaning: 'No line of the file names the columns.' },
  'column-missing': { kind: 'data', meaning: 'A column that is needed is not in the header.' },
  'column-unknown': {
    kind: 'remark',
    meaning: 'A column of the header means nothing to the tool and is not read.',
  },
  'column-unnamed': {
    kind: 'data',
    meaning: 'A column among the readings holds numbers, and nothing says what they are.',
  },
  'column-repeated': { kind: 'data', meaning: 'Two columns of the header mean the same.' },
  'statistics-left-out': {
    kind: 'remark',
    meaning: 'A row or column of statistics (a mean, a count) is not read as readings.',
  },
  'statistics-disagree': {
    kind: 'data',
    meaning: 'A mean, a least or largest value or a count in the file is not that of its readings.',
  },
  'statistics-unnamed': {
    kind: 'data',
    meaning:
      'Numbers among the readings are means or other statistics of them, and nothing names them so.',
  },
  'header-repeated': {
    kind: 'remark',
    meaning: 'The names of the columns stand in the file again, as on each page of a print.',
  },
  'line-left-out': {
    kind: 'remark',
    meaning: 'A line of text beside the table is not read.',
  },
  'table-left-out': {
    kind: 'remark',
    meaning: 'A second table holds no readings of panels and is not read.',
  },
  'tables-apart': {
    kind: 'data',
    meaning: 'A line of text sets two tables apart, and does not say by which vehicle or panel.',
  },
  'row-above-header': {
    kind: 'data',
    meaning: 'A row of readings stands above the line that names the columns.',
  },
  'table-repeated': {
    kind: 'data',
    meaning: 'The same rows stand in the file twice.',
  },
  'visits-together': {
    kind: 'data',
    meaning:
      'A file reads the same panels twice, on two days or otherwise than before: two visits, or two vehicles.',
  },
  'days-several': {
    kind: 'remark',
    meaning: 'Readings of several days are taken together as one survey of a vehicle.',
  },
  'points-alike': {
    kind: 'remark',
    meaning: 'Two names of points differ only in how a number is written; they are kept apart.',
  },
  'spot-method-unknown': {
    kind: 'data',
    meaning: 'A test spot names a machine, pad or product that the shop does not have.',
  },
  'spot-disagrees': {
    kind: 'data',
    meaning: 'The rows of one test spot contradict each other.',
  },
  'spot-in-two-files': {
    kind: 'data',
    meaning:
      'Two files of test spots name the same spot: whether that is one trial written twice or two trials, no file says.',
  },
  'spot-mark-twice': { kind: 'data', meaning: 'A mark of a test spot has two rows.' },
  'spot-keying-slip': {
    kind: 'data',
    meaning:
      'A reading of a test spot is ten times the others of its trial, or a tenth: it may be keyed wrongly.',
  },
  'spot-doubted': {
    kind: 'data',
    meaning:
      'A test spot reads what cannot be of its panel, of its sets or of any paint, goes on at the place of another, or reads at every mark what another reads: of whose paint it would tell, no one knows.',
  },
  'spot-film-gained': {
    kind: 'remark',
    meaning:
      'A mark of a test spot reads more after than before, beyond the gauge’s noise, or all of them do: their film does not count.',
  },
  'spots-mismatch': {
    kind: 'data',
    meaning: 'Test spots are of one vehicle and the input holds several.',
  },
  'compare-one-visit': {
    kind: 'usage',
    meaning: 'A comparison was asked for, and there are readings of one visit only.',
  },
  'compare-vehicles-differ': {
    kind: 'data',
    meaning: 'Readings that are to be compared are of different vehicles.',
  },
  'compare-film-gained': {
    kind: 'remark',
    meaning: 'A panel reads more film after the work than before, beyond chance.',
  },
  'compare-common-shift': {
    kind: 'remark',
    meaning:
      'All panels lost about the same amount more than was to go, or less, as where the gauge was set otherwise.',
  },
  'compare-visit-in-parts': {
    kind: 'remark',
    meaning:
      'Of several files that are compared, one reads no point that the file before it reads: each file counts as a visit.',
  },
  'compare-spots-left-out': {
    kind: 'remark',
    meaning:
      'A comparison is held against a plan that test spots went into, and is not told of the spots.',
  },
  'compare-not-recorded': {
    kind: 'remark',
    meaning:
      'A panel was read both times, and the film record that is written keeps nothing of what came off it.',
  },
  'compare-worked-unread': {
    kind: 'remark',
    meaning:
      'A panel was planned, or worked by what was said, and was not read both before and after: the film record that is written holds it to have lost what the plan foretold of the sets that were worked, with the spread of that, and not what was measured.',
  },
  'compare-record-left-out': {
    kind: 'remark',
    meaning:
      'A comparison is held against a plan that a film record went into, and is given no such record, or one that holds less.',
  },
  'compare-plan-of-others': {
    kind: 'remark',
    meaning:
      'The plan was made from other readings than those of before the work, or with another side as the nearside.',
  },
  'stated-clear-too-thick': {
    kind: 'remark',
    meaning: 'The clear that is stated is as thick as all the film that was read of a panel.',
  },
  'stated-layers-apart': {
    kind: 'remark',
    meaning:
      'The clear that is stated, and what is stated to lie under it or what was read, can hardly be of one paint.',
  },
  'date-in-future': {
    kind: 'remark',
    meaning: 'A day that is still to come was given with --date.',
  },
  'quote-before-read': {
    kind: 'remark',
    meaning: 'The day that a quote is of lies before the days on which its readings were taken.',
  },
  'compare-files-order': {
    kind: 'data',
    meaning: 'Files of readings are named in another order than that of the days they tell.',
  },
  'compare-visit-again': {
    kind: 'remark',
    meaning:
      'The film record that is given holds the visit that is to be added, as of another day.',
  },
  'compare-visit-within': {
    kind: 'remark',
    meaning: 'A visit of the film record that is given is a part of what came off here, or may be.',
  },
  'compare-visit-twice': {
    kind: 'data',
    meaning:
      'A visit of the film record is a part of what came off, or contains it, and would count twice; or the readings are those after it, and nothing says that the others are from before it.',
  },
  'compare-day-differs': {
    kind: 'remark',
    meaning: 'The day of the visit is not between the days that its readings tell.',
  },
  'compare-points-swapped': {
    kind: 'remark',
    meaning:
      'Marked points fit far better another way round: two panels exchanged, or a panel numbered from the other end.',
  },
  'compare-visit-earlier': {
    kind: 'remark',
    meaning: 'A visit is added to a film record that holds a later one.',
  },
  'compare-not-marked': {
    kind: 'remark',
    meaning: 'Points are called alike before and after, and nothing says that they were marked.',
  },
  'compare-nothing-shared': {
    kind: 'remark',
    meaning:
      'The readings before and after have no panel in common, or no marked point: nothing of what came off can be told by them.',
  },
  'plan-mismatch': { kind: 'data', meaning: 'The plan is of another vehicle than the readings.' },
  'worked-mismatch': {
    kind: 'data',
    meaning: 'The sets that were worked do not fit the steps of the plan.',
  },
  'worked-unplanned': {
    kind: 'remark',
    meaning: 'Sets were worked on a panel that the plan leaves alone, or does not have.',
  },
  'row-too-long': { kind: 'data', meaning: 'A row has more cells than the header.' },
  'row-too-short': { kind: 'data', meaning: 'A row has too few cells to say what it means.' },
  'comment-or-row': {
    kind: 'data',
    meaning: 'A line behind a # splits like a row of readings: a comment, or a row left out.',
  },
  'unit-missing': { kind: 'data', meaning: 'Nothing says whether readings are in µm or mil.' },
  'unit-unknown': {
    kind: 'data',
    meaning: 'The unit written in the file is not one of thickness.',
  },
  'unit-conflict': {
    kind: 'data',
    meaning: 'Two statements about the unit of the readings contradict each other.',
  },
  'unit-doubtful': {
    kind: 'data',
    meaning: 'The readings as a whole are no paint in their unit: another is likelier.',
  },
  'reading-ambiguous': { kind: 'data', meaning: 'A number can be read in two ways.' },
  'reading-not-a-number': { kind: 'data', meaning: 'A cell among the readings is not a number.' },
  'reading-missing': {
    kind: 'remark',
    meaning: 'A cell among the readings is empty: no reading there.',
  },
  'reading-over-range': {
    kind: 'remark',
    meaning: 'A cell among the readings says that the film was beyond the range of the gauge.',
  },
  'reading-error': {
    kind: 'remark',
    meaning: 'A cell among the readings holds an error of the gauge or of a spreadsheet.',
  },
  'reading-deleted': {
    kind: 'remark',
    meaning: 'A reading was marked as deleted and is left out.',
  },
  'reading-became-date': {
    kind: 'data',
    meaning: 'A spreadsheet turned a number among the readings into a date or a time.',
  },
  'reading-implausible': {
    kind: 'data',
    meaning: 'A reading is outside what a paint-thickness gauge can show, or what a film can be.',
  },
  'reading-doubted': {
    kind: 'remark',
    meaning:
      'A word, a sign or a line of the file may speak against a reading, which is read as it stands.',
  },
  'readings-altered': {
    kind: 'data',
    meaning: 'A line says that the numbers are to be multiplied, divided or shifted, or have been.',
  },
  'cell-invalid': { kind: 'data', meaning: 'A cell holds a value its column cannot take.' },
  'decisions-mismatch': {
    kind: 'data',
    meaning: 'A file does not fit the decisions that it is to be read by.',
  },
  'files-one-vehicle': {
    kind: 'remark',
    meaning:
      'Two files without a vehicle, or of the same, read the same points: they are taken as one visit to one vehicle.',
  },
  'files-two-vehicles': {
    kind: 'data',
    meaning:
      'Two files without a vehicle, or of the same, read the same points too far apart for one visit to one vehicle.',
  },
  'no-readings': { kind: 'data', meaning: 'The input holds no reading.' },
  'panel-missing': { kind: 'data', meaning: 'A row has a reading and no panel.' },
  'panel-unknown': { kind: 'data', meaning: 'A panel in the file is not on the template.' },
  'panel-ambiguous': {
    kind: 'data',
    meaning:
      'A panel name fits more than one panel of the template, or of another that fits as well.',
  },
  'panel-names-together': {
    kind: 'remark',
    meaning: 'Several names in the readings are read as one panel of the template.',
  },
  'panel-unmatched': {
    kind: 'remark',
    meaning: 'No template fits the panel names; they are kept as they stand.',
  },
  'template-undecided': { kind: 'data', meaning: 'No vehicle template fits the panel names.' },
  'template-unusual': {
    kind: 'remark',
    meaning: 'A template says something that is more often a slip than a vehicle.',
  },
  'sheet-nothing-more': {
    kind: 'remark',
    meaning: 'A panel asked for is not on the sheet, as its survey asks for nothing more there.',
  },
  'defect-unknown': { kind: 'data', meaning: 'A defect in the file is not one the tool knows.' },
  'defect-graded-twice': {
    kind: 'remark',
    meaning:
      'Two rows grade one defect of one panel differently, and the worse counts; or two rows of a local mark are the same word for word, and count as two.',
  },
  'json-syntax': { kind: 'settings', meaning: 'A JSON file breaks the rules of JSON.' },
  'json-duplicate-key': { kind: 'settings', meaning: 'A JSON object holds the same key twice.' },
  'settings-unknown-key': {
    kind: 'settings',
    meaning: 'A settings file holds a key that means nothing.',
  },
  'settings-invalid': {
    kind: 'settings',
    meaning: 'A settings file holds a value it cannot take.',
  },
  'job-mismatch': { kind: 'settings', meaning: 'The job is of another vehicle than the readings.' },
  'settings-panel-unknown': {
    kind: 'settings',
    meaning: 'A panel named in a settings file is not on the template.',
  },
  'settings-panel-ambiguous': {
    kind: 'settings',
    meaning: 'A panel name in a settings file fits more than one panel of the template.',
  },
  'settings-panel-twice': {
    kind: 'settings',
    meaning: 'A settings file speaks of one panel under two names.',
  },
  'stage-order': {
    kind: 'settings',
    meaning: 'The order of a job breaks a rule of the trade, or contradicts the scope of the job.',
  },
  'film-record-older': {
    kind: 'remark',
    meaning:
      'The film record that is given by hand lacks visits, or a part of them, that the one the job names holds: the one with all of them counts, for what they took is gone.',
  },
  'film-record-contradicts': {
    kind: 'settings',
    meaning:
      'A film record is given by hand, the job names another, and each holds of the visits what the other lacks: neither says all that was taken.',
  },
  'film-record-mismatch': {
    kind: 'settings',
    meaning: 'The film record is of another vehicle than the job or the readings.',
  },
  'film-record-differs': {
    kind: 'remark',
    meaning:
      'Most points read otherwise than the film record last read them, by more than any work takes: it may be of another vehicle.',
  },
  'batch-column-unknown': {
    kind: 'data',
    meaning:
      'A column of a list of jobs is near one that is known, or named as an option for all jobs, and is none.',
  },
  'batch-job-incomplete': {
    kind: 'data',
    meaning: 'A job of a list has no name, or no readings.',
  },
  'batch-job-twice': { kind: 'data', meaning: 'Two jobs of a list have the same name.' },
  'batch-value': {
    kind: 'data',
    meaning: 'A list says something of a job that its option cannot take.',
  },
  'batch-empty': { kind: 'data', meaning: 'A list or a folder holds no job.' },
  'batch-result': {
    kind: 'remark',
    meaning: 'A file in a folder of jobs is what a command of ours wrote: it is no job.',
  },
  'batch-left-alone': {
    kind: 'remark',
    meaning:
      'A folder of jobs holds other folders, files that may be readings in another form, or files that belong to none of its jobs.',
  },
  'init-exists': {
    kind: 'output',
    meaning: 'A file that init would write exists already: nothing is written.',
  },
  'environment-invalid': {
    kind: 'settings',
    meaning: 'A variable of the environment sets an option to a value it cannot take.',
  },
  'environment-unknown': {
    kind: 'remark',
    meaning: 'A variable of the environment that begins with LEASTCUT_ sets nothing.',
  },
  'settings-schema': { kind: 'settings', meaning: 'A settings file does not say what kind it is.' },
} as const satisfies Record<string, CatalogueEntry>;

export type DiagnosticCode = keyof typeof diagnosticCatalogue;
