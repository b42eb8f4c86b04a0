/**
 * The words of the trade and of this tool: the one home of the glossary. Other words for the same
 * thing, and the headings of the tables, stand beside the term they belong to.
 */

export type GlossaryEntry = {
  readonly term: string;
  /** Synonyms, short forms, headings, the same word as others spell it. */
  readonly also: readonly string[];
  readonly meaning: string;
  /** A word of the trade and of measuring, one that heads something on a page, or one that stands as a value. */
  readonly kind: 'word' | 'heading' | 'value';
};

const entry =
  (kind: GlossaryEntry['kind']) =>
  (term: string, also: readonly string[], meaning: string): GlossaryEntry => ({
    term,
    also,
    meaning,
    kind,
  });
const word = entry('word');
const heading = entry('heading');

export const glossary: readonly GlossaryEntry[] = [
  // The paint.
  word(
    'film',
    ['dft', 'dry film thickness', 'paint thickness', 'film thickness', 'total film', 'total'],
    'All layers of paint together; what most gauges read.',
  ),
  word(
    'clear coat',
    ['clear', 'clearcoat', 'lacquer coat', 'top clear'],
    'The uncoloured top layer; what is polished away is this.',
  ),
  word(
    'formula guard',
    ['apostrophe', 'apostrophe in csv', 'quote before a text'],
    'In csv a text that a spreadsheet would run as a formula (it begins with = + - @, a tab or a carriage return) has an apostrophe before it. Take one off and the text is as it was; numbers stand as they are.',
  ),
  word(
    'base coat',
    ['base', 'basecoat', 'colour coat'],
    'The layer that carries the colour, under the clear.',
  ),
  word(
    'primer',
    ['surfacer', 'primer surfacer', 'e-coat', 'undercoat', 'electrocoat'],
    'The layers between metal and colour: electrocoat against rust, surfacer to level it.',
  ),
  word(
    'topcoat',
    ['top coat'],
    'The layer on top, whichever it is: clear over base, or single-stage colour.',
  ),
  word(
    'single-stage',
    ['solid colour', 'one coat', '2k solid'],
    'Colour and gloss in one coat, with no clear over it.',
  ),
  word(
    'lacquer',
    ['cellulose', 'nitro', 'acrylic lacquer'],
    'An old kind of paint that dries by solvent alone and dissolves again in it.',
  ),
  word('matte', ['matt', 'satin', 'frozen'], 'A finish made dull on purpose; polishing spoils it.'),
  word(
    'refinish',
    ['respray', 'repaint', 'resprayed', 'repainted', 'aftermarket paint'],
    'Paint put on after the factory.',
  ),
  word(
    'blend',
    ['blended panel', 'blend panel', 'fade-out'],
    'A panel next to a repair, painted over part of it so that the colour runs out unseen.',
  ),
  word(
    'filler',
    ['bondo', 'putty', 'body filler', 'stopper'],
    'Thick repair material under paint.',
  ),
  word(
    'burn-through',
    ['rub-through', 'strike-through'],
    'A place polished through the clear, or through the colour, mostly at an edge.',
  ),
  word(
    'clear coat failure',
    ['delamination', 'peeling', 'lifting clear'],
    'Clear that whitens, lifts or peels. It cannot be polished out.',
  ),
  word(
    'ppf',
    ['paint protection film', 'protective film', 'clear bra', 'wrap'],
    'A plastic film stuck over the paint; it reads as paint on the gauge.',
  ),
  word(
    'coating',
    ['ceramic coating', 'ceramic', 'sealant', 'wax'],
    'Protection put on over finished paint. A thick one reads as film.',
  ),
  word('layer', ['coat'], 'One coat of the film: electrocoat, surfacer, base coat, clear coat.'),

  // What is wrong with it.
  word(
    'defect',
    ['defects', 'marks', 'general defect', 'local defect'],
    'Something on the paint that polishing may clear: swirl marks, holograms, marring, oxidation all over; etching and deep scratches at a place.',
  ),
  word(
    'swirl marks',
    [
      'swirls',
      'swirl',
      'spider webbing',
      'spider webs',
      'cobwebbing',
      'wash marks',
      'wash marring',
      'wash scratches',
    ],
    'Fine curved scratches from washing.',
  ),
  word(
    'holograms',
    ['hologram', 'buffer trails', 'buffer trail', 'rotary trails'],
    'Moving streaks left by a rotary machine.',
  ),
  word(
    'marring',
    ['micro-marring', 'micromarring', 'da haze', 'light scratches', 'fine scratches', 'scuffs'],
    'A dull veil of very fine marks, often left by cutting with a dual action machine.',
  ),
  word(
    'oxidation',
    ['oxidised', 'chalking', 'fading', 'faded paint'],
    'An outer layer that the weather made dull and powdery.',
  ),
  word(
    'etching',
    ['water etching', 'bird etching', 'water spots', 'bird lime', 'etch mark'],
    'A crater left where water, acid or droppings ate into the paint.',
  ),
  word(
    'deep scratch',
    ['random deep scratches', 'deep scratches', 'rids', 'isolated scratch'],
    'A single scratch far deeper than swirl marks: worked at its place, or left.',
  ),
  word(
    'sanding marks',
    ['sand scratches', 'pigtails'],
    'Lines of one grade of abrasive, left after levelling.',
  ),
  word(
    'orange peel',
    ['peel', 'texture'],
    'A bumpy surface like the skin of an orange. Polishing does not level it.',
  ),
  word(
    'grade',
    ['defect grade', 'rating'],
    'How bad a defect is, from 0 none to 5 severe, half steps allowed (ISO 4628-1). The command grade is another matter: it marks the surveys of trainees, each with a verdict and a mark in per cent.',
  ),

  // Machines and what is done with them.
  word(
    'machine',
    ['polisher', 'machines'],
    'What drives the pad: a rotary, a dual action machine, or a hand.',
  ),
  word(
    'pad diameter',
    ['pad mm', 'pad size'],
    'How wide the pad is, in mm. A pad wider than the flat of a panel does not lie flat there.',
  ),
  heading('name', ['what it is'], 'What a thing is called, in plain words.'),
  word(
    'motion',
    ['movement of the pad'],
    'How a machine moves its pad: it turns, it orbits, or a hand rubs.',
  ),
  heading(
    'factor',
    ['factor of the pad', 'factor of the product'],
    'Removal against a medium foam pad, or against a medium polish: 2 takes twice as much.',
  ),
  heading(
    'related',
    ['related rate'],
    'A rate without observations of its own, moved by those of combinations with the same machine, pad or product.',
  ),
  heading(
    'learned',
    ['own rates', 'rates file', 'learned rate'],
    'A rate that follows from what was measured on earlier vehicles of the shop, weighed against what is built in.',
  ),
  heading(
    'measured',
    ['own rate', 'measured by the shop'],
    'A rate that the shop measured itself. It counts in place of the derived one.',
  ),
  heading(
    'cool',
    ['not warm'],
    'Warming that asks for nothing: the panel stays under the temperature of caution.',
  ),
  word(
    'stop',
    ['too hot'],
    'Work no further. Of warming: a temperature that a panel must not reach, so take the machine off and let it cool.',
  ),
  heading('formula', ['what follows'], 'How a number is reckoned from others.'),
  word(
    'setting',
    ['settings', 'value', 'unit'],
    'A number that can be set, with the value in force and its unit.',
  ),
  word(
    'rotary',
    ['rotary polisher', 'buffer', 'circular'],
    'A machine whose pad turns about one fixed point. Cuts fast, warms, and leaves holograms.',
  ),
  word(
    'dual action',
    ['da', 'orbital', 'random orbital', 'dual action polisher'],
    'A machine whose pad runs round a small circle and may turn as well. Milder and cooler than a rotary.',
  ),
  word(
    'throw',
    ['orbit', 'stroke diameter', 'throw diameter'],
    'How wide the circle is that a dual action pad runs round, in mm.',
  ),
  word(
    'forced rotation',
    ['gear driven'],
    'A dual action machine whose gears keep the pad turning, whatever presses on it.',
  ),
  word(
    'free-spinning',
    ['random'],
    'A dual action machine whose pad turns by itself only, and stops under pressure.',
  ),
  word(
    'pad',
    ['pads', 'foam', 'polishing pad'],
    'What works the product on the paint: foam, microfibre, wool.',
  ),
  word('compound', ['heavy', 'cutting compound', 'rubbing compound'], 'A product that cuts much.'),
  word('polish', ['medium', 'fine', 'finishing polish'], 'A product that cuts little.'),
  word(
    'product',
    ['products', 'liquid', 'paste'],
    'The compound or polish: abrasive in a paste or a liquid.',
  ),
  word(
    'glaze',
    ['filling glaze', 'filler glaze'],
    'A product that hides marks by filling them, so that the light shows nothing until it is washed out.',
  ),
  word(
    'combination',
    ['method', 'combo', 'system'],
    'A machine, a pad and a product used together, written machine/pad/product.',
  ),
  word('step', ['steps'], 'So many sets of one combination over a panel.'),
  word(
    'set',
    ['sets', 'section pass', 'work cycle', 'a set', 'one more set'],
    'One working of a section with one load of product, several passes over it.',
  ),
  heading(
    'mildest set',
    ['mildest combination'],
    'A set of the mildest combination of the ladder, told where no plan is named: whether anything still fits the budget left. No step to take: what a panel needs, a plan says.',
  ),
  heading(
    'allowed',
    ['allowed, not asked for', 'go on'],
    'One more set of the step named would keep every limit of the panel. Whether the panel needs it, no reading says.',
  ),
  heading(
    'cannot tell',
    ['unresolved'],
    'The readings do not say whether one more set is too much: read more marked points.',
  ),
  word(
    'pass',
    ['passes', 'crosshatch', 'section passes'],
    'Once over the section with overlapping strokes.',
  ),
  word('overlap', [], 'The share of a stroke that the next stroke covers again.'),
  word('section', ['working section', 'area'], 'The piece of a panel that is worked at a time.'),
  word(
    'arm speed',
    ['hand speed', 'machine speed over the panel'],
    'How fast the machine is moved over the panel.',
  ),
  word(
    'stage',
    ['stages', 'stages of a correction'],
    'Where in a correction a step stands: cut, refine or finish.',
  ),
  word(
    'cut',
    ['cutting', 'cut step'],
    'The first and coarsest stage of a correction: it takes the marks out.',
  ),
  word(
    'refine',
    ['refining', 'polishing step'],
    'The middle stage: it takes out what the cut left.',
  ),
  word(
    'finish',
    ['finishing', 'jewelling', 'finish step'],
    'The last and mildest stage: it leaves no haze. In a job file, what the topcoat is.',
  ),
  word(
    'haze',
    ['haze grade', 'micro haze'],
    'A fine dullness that a step leaves, from 0 mirror to 4 heavy; a milder step clears it.',
  ),
  heading(
    'came off',
    [
      'removed',
      'took',
      'before less after',
      'film gone',
      'came off at points',
      'mean before',
      'mean after',
    ],
    'What a panel read before less what it read after, with the interval that holds the truth in 95 cases of 100.',
  ),
  heading(
    'seen',
    ['seen on', 'resolved'],
    'Whether the readings show that film came off. No does not mean that none did: the change is within what they scatter.',
  ),
  heading(
    'pair',
    ['pairs', 'marked pair', 'paired'],
    'A marked point read before and again after: the film’s own variation goes out of the difference.',
  ),
  heading('planned', ['foretold'], 'The middle of what a plan foretold to come off.'),
  heading(
    'as done',
    ['planned for the sets worked', 'worked'],
    'The middle of what a plan foretold for the sets that were worked of it (--worked).',
  ),
  heading(
    'visit',
    ['visits', 'from visit to visit'],
    'One going over the car with the gauge; each has a file of readings of its own.',
  ),
  word(
    'gloss',
    [
      'gloss in gu',
      'gloss units',
      'gu',
      'gloss before',
      'gloss after',
      'gloss gained',
      'angle',
      'places',
    ],
    'How mirror-like a surface is, in gloss units at 20°, 60° or 85° (ISO 2813, ASTM D523). It tells of the look and nothing of the film.',
  ),
  heading(
    'before',
    ['after', 'now', '○ before, ● after', '○ before, · now'],
    'What was so before something was done, beside what is so now: a reading before the work, a rate before the test spots.',
  ),
  heading(
    'told from nothing',
    ['told from', 'shows from', 'resolvable'],
    'The least removal that marks read so often tell from none at all; half of the time they miss it.',
  ),
  word(
    'ladder',
    ['rung', 'rungs', 'step up', 'ladder, mildest first'],
    'Combinations in order of how much they remove.',
  ),
  word(
    'test spot',
    ['test spots', 'spot', 'test section', 'test panel'],
    'A small trial that shows how this paint answers a combination: a patch of a hand’s width is polished, its film read before and after, and leastcut spot says what that shows. One does for all factory paint of a car. A refinished panel needs its own, which takes no more than may go from the original panel that allows least; it is passed if no colour comes onto a white pad. Until one is seen, a plan is provisional.',
  ),
  heading(
    'patch',
    ['test patch'],
    'The place that a test spot polishes, about a hand’s width. What it loses is lost there alone, and has to be allowed there.',
  ),
  word(
    'provisional',
    ['no test spot yet'],
    'A plan without a test spot on this paint: its removal rests on published physics and wide ranges. The first trial may change it.',
  ),
  heading(
    'clear read',
    ['clear reading', 'clear by itself'],
    'The clear measured apart from what lies under it, by a gauge that resolves layers (mostly ultrasonic), panel by panel. A gauge that reads the whole film cannot.',
  ),
  word(
    'de-nib',
    ['denib', 'nib'],
    'To take off a speck of dust in the paint by sanding that place alone.',
  ),
  word(
    'wet sanding',
    ['sanding', 'flatting', 'colour sanding'],
    'Levelling paint with fine abrasive paper and water; takes far more film than polishing.',
  ),
  word(
    'panel wipe',
    ['ipa', 'ipa wipe', 'wipe down', 'solvent wipe', 'degrease'],
    'A solvent wiped over the panel so that no oil or filler hides marks before it is judged.',
  ),
  word(
    'decontamination',
    ['clay', 'iron remover', 'tar remover'],
    'Taking off what is stuck to the paint before it is worked: iron, tar, fallout.',
  ),
  word(
    'masking',
    ['tape', 'tape m', 'masking tape', 'trim'],
    'Taping over trim and edges so that the pad does not reach them.',
  ),
  word(
    'edge',
    ['body line', 'shut', 'face'],
    'The outer 25 mm of a panel and its raised lines, where film is thin. The rest is the face; a shut is inside a door.',
  ),

  // Removal.
  word(
    'removal',
    ['film removed', 'removal per set', 'rate', 'µm a set', 'mil a set', 'cut rate'],
    'How much film a step takes off. It is never known exactly: a range is given, nine cases of ten within.',
  ),
  word(
    'preston’s law',
    ["preston's law", 'preston', 'preston coefficient'],
    'Removal = coefficient × pressure × sliding speed × time under the pad (Preston 1927).',
  ),
  word(
    'pressure',
    ['contact pressure', 'force', 'force n', 'load'],
    'The force on the pad over the area of the pad.',
  ),
  word(
    'sliding speed',
    ['pad speed', 'rubbing speed'],
    'How fast the pad’s face slides on the paint, on the average.',
  ),
  word(
    'contact time',
    ['dwell', 'dwell time'],
    'How long a spot of the section is under the pad in one set.',
  ),
  word(
    'hardness',
    ['hard paint', 'soft paint', 'paint hardness'],
    'How much a paint gives up to the same work: soft paint more, hard paint less.',
  ),
  word(
    'heat',
    [
      'friction heat',
      'panel temperature',
      'warmth',
      'one pass',
      'one pass warms by',
      'one set',
      'one set warms by',
      'a step',
      'a step warms by',
      'stand at most',
      'stand',
      'reaches °C',
    ],
    'What friction warms the panel by. Thin metal and plastic warm most; a pad that stands still burns.',
  ),

  // Aims, limits, risk.
  word(
    'aim',
    ['aims', 'enhance', 'correct', 'full', 'target'],
    'The share of a panel’s general marks that the job is to clear: enhance, correct, full.',
  ),
  word(
    'correction',
    ['paint correction', 'defect removal', 'cleared'],
    'The share of marks whose whole depth has been taken off around them.',
  ),
  word(
    'budget',
    ['may go', 'budget_um', 'removal budget', 'allowance'],
    'The largest median removal that keeps every limit on a panel at the chosen risk: plan no more. That a removal turns out larger than its middle is within that risk. It keeps the risk over all that the panel may be, each by its chance, not on each side of a line alone.',
  ),
  word(
    'floor',
    ['┊', 'minimum film', 'total floor', 'clear floor', 'safe thickness'],
    'A thickness not to go below: of the clear, or of the total film.',
  ),
  word(
    'life limit',
    ['life', 'life budget'],
    'The most that may ever be taken off one panel, earlier work counted.',
  ),
  heading(
    'plan takes',
    ['‹ of what may go', 'of what may go'],
    'The middle of the removal that the steps of a plan make on a panel; drawn as ‹ on the bar of what may go.',
  ),
  heading(
    'next limit',
    ['○'],
    'The limit that would bind if the one that does were lifted, and what it allows; drawn as a ring beyond the bar.',
  ),
  heading(
    'bound by',
    ['binding limit', 'bound_by'],
    'The limit that allows least, and so decides what may go. The words in this column are the limits: clear or topcoat, life, total, n = 1, matte, covered, fresh, spot 1st, others, as tried, line, no data. Each has a meaning of its own.',
  ),
  heading(
    'line',
    ['unsettled', 'till settled', 'till it is settled', 'not settled', 'near-its-line'],
    'Where a panel is bound by this, it reads so near the border between two conditions (original or cut before, say) that either may be true. What may go keeps the risk over all that it may be, each weighed by its chance, as on every panel; here that takes much of it. It is not safe on the worse side alone: the survey says what the risk is there. Settle first what it is. No body line is meant.',
  ),
  heading(
    'settle first',
    ['perhaps cut-back', 'even untouched'],
    'Panels near their line: settle what they are before they are polished. Who does not keeps to the figure told, if there is one. “Even untouched” is the chance that too little clear is there already.',
  ),
  heading(
    'not yet',
    ['way out'],
    'Panels from which nothing may go till something is done or learnt; the page says what. Of those under “Leave” nothing that could be learnt changes it; those under “Spot first” need a test spot of their own.',
  ),
  heading(
    'read again first',
    [],
    'A value that looks keyed wrongly, a 0, or a value beyond the range of the gauge: read the same place again before anything else, as it decides what is said of that panel.',
  ),
  heading(
    'once read again',
    ['only once measured again'],
    'What of the hours and the price of a quote is for panels that are worked only once they are read again: the job less the same job with nothing done on them.',
  ),
  heading(
    'planned and not compared',
    [],
    'Panels that the plan works and that were not read again: what went there is forecast by the plan, or by the sets that were worked, and kept on the film record as that. Read them, and compare again.',
  ),
  heading(
    'as built in',
    [],
    'What the program holds where no file and no option says otherwise; beside it stands what is in force.',
  ),
  heading(
    'few points',
    [],
    'Panels that the plan works by three or four points: that is no bar to the work, and the further points that it names may let more go.',
  ),
  heading(
    'read more first',
    [],
    'Panels that the plan works though fewer than three points of them were read: read the further points that it names before any of them is worked.',
  ),
  heading(
    'before any work',
    ['first check the gauge'],
    'What is to be settled before any panel is worked: files that may be of two cars, a gauge that failed its check or may have moved, film that is thick all over, or a trial that took more than was meant.',
  ),
  heading(
    'mind',
    ['much risk'],
    'What is easily done wrong with this page, or what was asked for that carries more risk than usual: read it before the figures.',
  ),
  heading(
    'colour on the pad',
    ['no colour on the pad'],
    'Whether the polish took on the colour of the paint at a trial. Colour says that the clear is through there, or that there is none; none on paint said to have no clear says that there is one, or that nobody looked.',
  ),
  heading(
    'too much came off',
    ['perhaps too much came off'],
    'At a trial or at work more film went, or may have gone, than might go: find out why before any further panel is worked.',
  ),
  heading(
    'assumed, say otherwise',
    [],
    'What nobody stated or measured and bears most on the result; the key of the file in which to say otherwise stands behind it.',
  ),
  heading(
    'stated',
    ['what is held of the paint, and where it is said'],
    'What the files say of the paint and its past, and which file says it.',
  ),
  heading('what to do', [], 'What follows from what the page found, the first thing first.'),
  heading(
    'where its lines are from',
    [],
    'The figures that the two lines of a panel are drawn from: over the one its film reads like repaint, under the other it is cut back.',
  ),
  heading(
    'read in vain',
    [],
    'Panels that were read, but whose readings say nothing of their paint, as on plastic; what could be done stands behind them.',
  ),
  heading(
    'risk if a plan took it all',
    ['risk is told', 'what would lower it'],
    'The risk of too thin a clear on a panel worked to all that may go, what makes up its doubt, and what would lower it.',
  ),
  heading('besides', [], 'Advice that is of use and does not come first.'),
  heading(
    'read at the spots',
    ['marks that stay', 'local work'],
    'What single marks come to: film read beside them, what is done at their places, and those that are left.',
  ),
  heading('less may go', [], 'Why less may go at this visit than at the one before.'),
  heading(
    'not on the film record',
    ['more film at a later visit', 'points left out of the pairs'],
    'What a comparison of visits leaves out or cannot explain: panels whose loss is not recorded, film that grew from one visit to the next, and points that have no partner.',
  ),
  heading(
    'against the plan',
    ['plan in doubt'],
    'How what came off compares with the plan; where the plan may be of another car or other work, nothing is held against it.',
  ),
  heading(
    'reference in doubt',
    ['marks in doubt', 'unlike the others'],
    'Where most of a class, or most of what was observed, disagrees with what it is held against: look there before anybody is judged by it.',
  ),
  heading(
    'too few points',
    ['reference of few points', 'reference of one point a panel'],
    'Too few points were read, by the trainee or for the reference, to judge panels by their spread.',
  ),
  heading(
    'too alike',
    ['copies', 'handed in twice'],
    'Surveys that have more figures in common than chance gives, or are the same file: ask before the marks are given.',
  ),
  heading(
    'void',
    ['not observed', 'why it cannot be read', 'how it is scored'],
    'What was scored and what was not: void panels count as not read, and the page says how the rest was scored.',
  ),
  heading(
    'n = 1',
    ['one point', 'single point'],
    'A panel of which one point alone was read: that says nothing of how the film varies, so no machine work is planned on it.',
  ),
  heading(
    'failed',
    ['clear coat failed', 'failed clear'],
    'The clear lifts, whitens or peels, as the job file or the defects file says: nothing may go, the panel is refinished.',
  ),
  heading(
    'fresh',
    ['fresh paint', 'new paint'],
    'Paint so young that it still hardens, by the date in the job file: nothing may go yet.',
  ),
  heading(
    'others',
    ['original panels', 'sound panels'],
    'A repainted panel with a test spot of its own: no more may go than on the original panel of the same car that allows least.',
  ),
  heading(
    'as tried',
    ['depth of its test spot', 'as deep as tried'],
    'A repainted panel with a test spot of its own: no more may go in the middle than the sets of its deepest spot take, which showed no colour on the pad. For more, work that spot deeper first.',
  ),
  heading(
    'spot 1st',
    ['a test spot comes first', 'spot first'],
    'A repainted or filled panel: its total says nothing of its clear, so nothing may go until a test spot was made on that panel.',
  ),
  heading(
    'no data',
    ['nothing known'],
    'No valid reading of the panel: nothing is known of its film, so nothing may go.',
  ),
  word(
    'chance',
    ['chance to reach the aim', 'aim_prob'],
    'In a ladder of test spots: how likely one step of that combination clears what the job aims at. More is better. The danger to the paint is another thing: see risk.',
  ),
  word(
    'risk',
    ['risk_prob'],
    'The chance, over cars like those assumed, that a plan leaves the clear under its floor on more than a twentieth of the panel.',
  ),
  heading(
    'if thin',
    ['risk if thin', 'risk_if_thin', 'risk_if_thin_prob'],
    'The same risk on a car whose clear is thinner than usual.',
  ),
  word(
    'estimate',
    ['quote', 'cost estimate'],
    'A price by best judgement before the work begins; it may change. A quotation is a fixed offer.',
  ),
  word(
    'quotation',
    ['fixed price', 'offer'],
    'A fixed offer for what is written in it. An estimate may change.',
  ),
  heading(
    'price',
    ['+1 % price', '+1 % costs', 'parts', 'what it is for'],
    'What a choice costs, tax included; +1 % costs: what each further per cent of correction costs from the row before.',
  ),
  heading(
    'spent',
    ['film spent', 'paint taken', 'paint taken there', '+1 % film', '+1 % takes', 'spent_um'],
    'Mean film that a choice takes, over all paint that was read and has marks, polished or not; +1 % takes: what each further per cent takes.',
  ),
  heading(
    'left',
    ['top layer left', 'clear left', 'left_um'],
    'The least clear, or topcoat, that is expected to stay on the thinnest part of any panel that is worked.',
  ),
  heading(
    'clears',
    ['marks that go', 'marks that go, of all measured', 'of those where it is polished', 'choice'],
    'The share of the general marks that a choice is expected to clear, over all paint that was read and has marks: a panel left alone counts with nothing.',
  ),
  heading(
    'panels worked',
    ['panels read'],
    'In a list of jobs: how many panels of the vehicle were read, and how many of those a plan works.',
  ),
  heading(
    'clears at least',
    ['least_expected_pct'],
    'In a list of jobs: what the plan clears on the panel where it clears least.',
  ),
  heading(
    'highest risk',
    ['largest_risk_prob'],
    'In a list of jobs: the risk of the panel whose risk is highest.',
  ),
  heading(
    'at its aim',
    [],
    'In a list of quotes of several aims: the price of the one that the command, the job or the shop asks for.',
  ),
  heading(
    'not promised',
    ['exclusions'],
    'What a quote does not promise, and why; in a list of jobs, how many such things there are.',
  ),
  heading(
    'least that may go',
    ['least_budget_um'],
    'In a list of jobs: what may go on the panel that allows least.',
  ),
  heading(
    'least film',
    ['least_um'],
    'In a list of jobs: the thinnest credible film of the panel where it is thinnest.',
  ),
  word(
    'overrun',
    ['overrun_prob'],
    'The chance that a job takes more hours than its price is made for.',
  ),
  heading('already', ['already_prob'], 'The part of the risk that stands before any polishing.'),
  heading(
    'nine of ten',
    ['counted in the risk'],
    'What a removal turns out to be in nine cases of ten: less than its lower end in one of twenty, more than its upper end in one of twenty. What may go, and the risk, allow for it.',
  ),
  heading(
    'how to read it',
    ['legend'],
    'What the columns and the signs of the table above it mean.',
  ),
  word(
    'policy',
    ['standard', 'strict', 'standard policy', 'strict policy'],
    'Which published clear floor to keep: the standard one, or the strict one of some makers.',
  ),
  word(
    'verdict',
    ['plan', 'answer'],
    'What becomes of a panel: polish, lighter, hand, leave or refinish.',
  ),
  word(
    'condition',
    ['state of a panel'],
    'What the readings say a panel is: original, thin, cut back, refinished, filler, mixed, covered, unread.',
  ),
  word(
    'film record',
    ['history', 'earlier work'],
    'What was read and taken off at each visit, panel by panel. It decides what may still go.',
  ),

  // Measuring.
  word('reading', ['readings', 'values', 'measurement'], 'One value shown by the gauge.'),
  word(
    'point',
    ['points', 'n', 'measuring point'],
    'A place on a panel; its value is the mean of the readings there.',
  ),
  word(
    'gauge',
    ['paint gauge', 'ptg', 'depth gauge', 'thickness gauge', 'paint meter'],
    'The instrument that reads film thickness. Magnetic and eddy-current ones need metal under the paint.',
  ),
  word(
    'micrometre',
    ['um', 'µm', 'micron', 'microns', 'mic'],
    'A thousandth of a millimetre: the unit of film.',
  ),
  word('mil', ['thou', 'mils'], 'A thousandth of an inch: 25.4 µm.'),
  word(
    'calibration error',
    ['calibration', 'gauge error', 'zeroing'],
    'What a gauge is off by on all its readings alike; it does not shrink with more of them.',
  ),
  word(
    'repeatability',
    ['repeat', 'repeats'],
    'How far readings of one place differ when the gauge is lifted and set down again.',
  ),
  word('resolution', ['step of the gauge'], 'The smallest step a gauge shows.'),
  word(
    'shim',
    ['shims', 'foil', 'foils', 'feeler', 'calibration foil'],
    'A foil of known thickness, with a certificate that says what it may itself be off by. Laid on a bare plate it shows what a gauge is off by.',
  ),
  word(
    'bare plate',
    ['plate', 'zero plate', 'base plate'],
    'Metal without any paint: a shim of 0, on which a gauge must show nothing.',
  ),
  word(
    'gauge check',
    ['check', 'verification', 'verify', 'verified'],
    'Readings of shims, taken before a car is read and again after it (ASTM D7091 asks for both).',
  ),
  word(
    'indication error',
    ['off by', 'error of a gauge'],
    'What a gauge shows on a shim, less what the shim is. Its own uncertainty stands beside it.',
  ),
  word(
    'expanded uncertainty',
    ['U', '± u', 'u95', 'k = 2'],
    'The half-width that holds the true value with 95 % confidence (GUM).',
  ),
  word(
    'mpe',
    ['permitted', 'permitted error', 'maximum permissible error', 'largest error permitted'],
    'The largest error that the maker of a gauge permits: a fixed part and a share of the film, as on its data sheet.',
  ),
  word(
    'guard band',
    ['guard bands', 'undecided check'],
    'The strip on either side of a limit in which a check does not decide, because the error is uncertain by more than it is away from the limit (JCGM 106).',
  ),
  word(
    'conformance probability',
    ['conforms', 'conformity'],
    'The chance that the true error is within what is permitted, by what the check found (JCGM 106).',
  ),
  word(
    'drift',
    ['drifted', 'gauge drift'],
    'How far a gauge moved between two checks on the same shims, before the work and after it.',
  ),
  word(
    'adjustment',
    ['adjusted', 'remains', 'residual', 'gauge adjustment'],
    'A line through a check on shims by least squares, and its inverse, which puts readings right. Only when asked for: it adds an error of its own.',
  ),
  word(
    'substrate',
    ['under the paint', 'steel', 'aluminium', 'plastic', 'composite', 'galvanised steel'],
    'What is under the paint: steel, galvanised steel, aluminium, plastic.',
  ),
  word(
    'galvanised',
    ['galvanized', 'zinc', 'zinc coated'],
    'Steel with a coat of zinc, which a magnetic gauge counts as paint.',
  ),

  // Statistics.
  word('mean', ['mean ± sd', 'average'], 'The sum of the values over their count.'),
  word(
    'standard deviation',
    ['sd', '±', 'spread', 'scatter'],
    'How far values lie from their mean, typically. Behind a mean, ± is the standard deviation of the points; where ± is a 95 % interval, the page says 95 % beside it.',
  ),
  word('median', ['middle', 'typical'], 'The value with as many above it as below.'),
  heading(
    'min',
    ['minimum', 'smallest point', 'thinnest reading'],
    'The least point of a panel. In the list of methods: the minutes that one set takes on one section.',
  ),
  word(
    'quantile',
    ['percentile', 'p50', 'p80', 'p95'],
    'The value that a stated share lies below. P80: four jobs of five take no longer.',
  ),
  word(
    'ln-sd',
    ['log sd', 'logarithmic spread'],
    'The spread of a quantity as a factor: at 0.55, nine cases of ten lie within 2.5 times more or less.',
  ),
  word(
    'range',
    ['90 % range', 'interval'],
    'From the value that one case of twenty stays under to the one that one of twenty exceeds.',
  ),
  word('coverage', ['covers'], 'How often a stated interval holds the true value.'),
  word('confidence', ['confidence level'], 'How often a statement made in this way is right.'),
  word(
    'effective degrees of freedom',
    ['degrees of freedom', 'dof'],
    'How much evidence stands behind an estimated spread, as if counted in readings.',
  ),
  word(
    's0',
    ['d0', 'd0 s0', 's0 d0'],
    'How much film usually varies from point to point over a panel of this car, as a standard deviation (s0), and how much weight that has beside a panel’s own points, counted in points (d0).',
  ),
  heading(
    'second words',
    ['second word', 'and cut-back', 'and refinished'],
    'What a panel may be besides the condition in the table: thin, and cut before as well. The line under the table says how sure each is.',
  ),
  word(
    'moderated spread',
    ['pooled spread'],
    'A panel’s own standard deviation drawn towards what the car’s other panels show.',
  ),
  word(
    'thinnest credible film',
    ['least', 'thinnest_um', 'thinnest', 'thinnest credible', '‹'],
    'A thickness that at least 95 % of the face of the panel exceeds, with 95 % confidence, where a shop sets nothing else. Edges and body lines are no part of it.',
  ),
  word(
    'baseline',
    ['usual film of this car', 'usual film', 'this car’s usual film'],
    'The median of what a car’s metal panels read, repaints over 200 µm left out: every panel is held against it. How sure it is follows from how far those medians lie apart. From it come the lines of cut-back film, 12 µm under it, and of repaint, 40 µm or 35 % over it but 200 µm at most; a point over 500 µm is filler for any car, and sides that face each other get a note from 25 µm. --why PANEL names the panels that make it, and each line with its grounds. A panel with zinc under its paint is held against film with zinc, one without against film without.',
  ),
  word(
    'low points',
    ['low point', 'high points', 'high point', 'outlier'],
    'Points that read further from the others than chance explains. They stay in.',
  ),
  word('zone', ['zones'], 'A part of a panel whose film differs from the rest.'),
  word('mirror panels', ['mirror', 'mirrored panels'], 'The left and the right one of a pair.'),

  // The job.
  word('survey', [], 'What the readings of a vehicle add up to, panel by panel.'),
  word(
    'template',
    ['templates', 'body', 'vehicle template'],
    'The panels of a kind of vehicle, with areas, edges and walking order.',
  ),
  word(
    'panel',
    ['panels'],
    'A part of the body that is painted and worked as one: bonnet, door, wing.',
  ),
  word('walking order', ['route'], 'The order in which one goes round the vehicle to read it.'),
  word(
    'facing',
    ['horizontal', 'upper', 'lower', 'vertical'],
    'Which way a panel looks: the sun takes most from those that face up.',
  ),
  word(
    'flat width',
    ['flat mm', 'flat'],
    'The narrowest flat stretch of a panel: a wider pad does not lie flat there.',
  ),
  heading(
    'area m²',
    ['m²', 'area m2', 'square metres'],
    'The area of paint that is worked, without glass and openings.',
  ),
  word(
    'vehicle',
    ['car', 'van', 'vehicle id'],
    'What is surveyed and worked; one job is of one vehicle.',
  ),
  heading('id', ['identifier'], 'The short name by which files and options mean a thing.'),
  word(
    'hand–arm vibration',
    ['hand-arm vibration', 'vibration', 'havs', 'vibration points', 'exposure'],
    'What the machine shakes into hands and arms. 100 points a day are the action value, 400 the limit (2002/44/EC; HSE).',
  ),
  heading(
    'points a hand',
    ['action value', 'exposure action value', 'points a hand in a day'],
    'The vibration points of one pair of hands in a day. Over the action value, 100 points, the exposure is to be made less: share the machine, keep hands warm, rest them. 400 points are the limit (2002/44/EC; HSE).',
  ),
  word('job file', ['job', 'leastcut/job/1'], 'One job as JSON: vehicle, finish, history, aim.'),
  word(
    'shop file',
    ['shop', 'leastcut/shop/1', 'project', 'project file', 'user', 'user file', 'leastcut.json'],
    'What a workshop has and how it works, as JSON. One may be named, one found in the folders above, one be yours for all work.',
  ),
  word(
    'basis',
    ['grounds'],
    'What a number stands on: published, common practice, from memory, derived, assumption.',
  ),
  word(
    'origin',
    ['from', 'where', 'lines', 'flag', 'environment'],
    'Where a value in force comes from: option, list of a batch, environment, job, shop, project or user file, built-in.',
  ),
  word(
    'default',
    ['built-in', 'defaults'],
    'A number that holds until someone sets another; each has a name, a basis and a source.',
  ),
  word(
    'assumption',
    ['assumed', 'assumptions'],
    'Something the result rests on and nobody measured or stated.',
  ),
  word(
    'advice',
    ['what would help', 'would help', 'what would help, a panel at best'],
    'What would make the answer surer, or allow more.',
  ),
  word(
    'more may go',
    [
      'µm more may go',
      'mil more may go',
      'more may go, alone, if as reckoned',
      'panels; each alone, if as reckoned',
    ],
    'How much more may go once a thing is known that would help, from the least to the most over the panels named: each by itself, not to be added, and if it comes out as reckoned; under 0.15 µm it stands under -v alone.',
  ),
  word(
    'takes',
    [],
    'Of what would help: the minutes, for each panel or once for the car; or that somebody’s word is asked for.',
  ),
  word('reason', ['reasons'], 'Why a panel’s plan is as it is.'),
  word('caution', ['cautions'], 'What to mind while working.'),
  word('limit', ['limits'], 'Something that may not be broken, with what it allows to go.'),
  word(
    'diagnostic',
    ['diagnostics', 'error', 'warning'],
    'What the tool has to say of an input: a code, a sentence, the place and a way out. An error stops, a warning does not.',
  ),
  heading(
    'note',
    ['notes', 'remark'],
    'Something that stops nothing and may be worth knowing; -v shows it.',
  ),
  heading(
    'time',
    ['p50 p80 p95', 'hours', 'hours of work'],
    'Hours of the correction as a range: half of such jobs take less than P50, four of five less than P80.',
  ),
  heading(
    'materials',
    ['material', 'towels', 'product used'],
    'What the correction uses up: product, pads, towels, tape. A price charges what is used up, pads by what is worn of them, towels not at all: they are washed.',
  ),
  heading(
    'order of the job',
    ['order'],
    'The stages of the whole job, from the first look to the last.',
  ),
  heading(
    'whole job',
    ['scope', 'materials of the whole job'],
    'Everything from taking the vehicle in to handing it over; what of it is done is its scope.',
  ),
  heading(
    'days',
    ['days in the bay', 'day plan', 'days with us'],
    'The job laid into days: by the hours of a day, what must cure or cool, and the vibration that a person may have in a day.',
  ),
  word(
    'rcd',
    ['residual current device', 'safety switch'],
    'A switch that cuts the current off within a moment when some of it goes astray, as through a wet cable or a person.',
  ),
  heading(
    'strip',
    ['strip of dots', 'dot strip'],
    'The small drawing in a row of a table: a dot for each point along one scale of film, the same for all rows. The line under the table says what its other signs mean.',
  ),
  heading(
    'take in',
    ['taking in', 'intake of the vehicle'],
    'The first stage of a job: the vehicle is received and its condition recorded.',
  ),
  heading(
    'dust out',
    ['unmask and dust out'],
    'After the machine work: masking off, and polishing dust out of gaps, trim and shuts.',
  ),
  heading(
    'sequence',
    ['order of steps', 'sequence of steps'],
    'Steps one after the other, as a plan may combine them: a cut and then a finish, say. --why says how many were looked at, and why none of the milder ones was taken.',
  ),
  heading(
    'a(8)',
    ['daily exposure', 'a8'],
    'Hand–arm vibration of a day as if it had lasted eight hours: a·√(t/8 h). 2.5 m/s² is the action value, 5 the limit (2002/44/EC).',
  ),
  heading(
    'spread of the time',
    ['share of the spread'],
    'Which stages the uncertainty of the hours comes from, and how much of it is a pace that the shop’s own hours would tell.',
  ),
  heading(
    'own hours',
    ['history of hours', 'own pace'],
    'What jobs of this shop took against their estimates: it moves and narrows the next estimate.',
  ),
  heading(
    'pads and towels',
    ['worn out', 'pad life'],
    'Pads to have ready and how much of their life the job takes; towels to wash after. A price charges pads by what is worn of them, and no towels.',
  ),
  word(
    'work card',
    ['card', 'bay card', 'keep off', 'test spot first'],
    'The plan as a page to work from in the bay: steps and sets by panel, with boxes to tick.',
  ),
  heading(
    'machine speed',
    ['speed', 'rpm', 'orbits a minute'],
    'How fast the machine turns its pad or moves it round its orbit.',
  ),
  heading(
    'min a section',
    ['minutes a section', 'a section takes', 'a set on a section takes'],
    'How long one set takes on one section of usual size; the arm speed follows from it.',
  ),
  heading(
    'not read',
    ['unread panel', 'unread, so nothing is sure and nothing may go'],
    'Panels without a valid reading: nothing is known of them, so nothing may go.',
  ),
  word(
    'near the line',
    [
      'near its line',
      'near their line',
      '?',
      'clear-cut',
      'how sure each mean (95 %) and each condition is',
    ],
    'A condition is near its line, and marked with ?, where the truth lies with over 5 % chance on the other side of the line that decided it.',
  ),
  heading(
    'off the face',
    ['off the face, kept apart', 'kept apart', 'reported apart'],
    'Points near an edge, on a body line or in a shut: they are told, and enter no statistic of their panel.',
  ),
  heading('left out', ['excluded'], 'Cells that are not readings, each with its reason.'),
  heading('care', [], 'What to mind while working.'),
  heading(
    'outer size',
    ['L × W × H m', 'vehicle size'],
    'Length, width and height of a vehicle in m, by which a template is scaled.',
  ),
  heading('inputs', ['input'], 'The files that were read, and how each was understood.'),

  // A panel taken apart.
  heading(
    'share',
    ['of its variance'],
    'The part of a whole that something makes up; of an uncertainty, of its variance.',
  ),
  heading(
    'uncertain by',
    ['uncertainty budget', 'how sure', 'the mean is uncertain by', 'uncertainty of the mean,'],
    'What makes a mean uncertain, source by source: film that varies, the gauge’s scatter, its step, its own error.',
  ),
  word(
    'distribution-free',
    ['whatever its shape'],
    'What points prove if nothing is assumed of how film varies: much less than where it varies normally.',
  ),
  heading(
    'what limits it',
    ['side by side'],
    'Every limit on a panel with the removal that it allows; the smallest binds.',
  ),
  heading(
    'points that stand out',
    ['low_points', 'high_points'],
    'Points that read lower or higher than the spread explains: to be looked at again, never left out.',
  ),

  // Training.
  word(
    'reference',
    ['assigned value', 'expert'],
    'What surveys of trainees are compared with: the survey of an expert, or the consensus of the class.',
  ),
  word(
    'consensus',
    ['algorithm a', 'robust mean'],
    'The robust mean of a class: the median of fewer than eight surveys, of more by Algorithm A of ISO 13528. Of three to six surveys one may be as far off as it likes. What the consensus itself is uncertain by (1.25·s*/√p) counts in every score and in the bias.',
  ),
  word(
    'trainee',
    ['student', 'attempt'],
    'Whose survey is graded; several surveys of one name are attempts in the order of the files.',
  ),
  word(
    'rubric',
    ['rubric file', 'leastcut/rubric/1', 'marking scheme'],
    'How surveys of trainees are marked, as JSON: pass_mark_pct, and weights of accuracy, coverage, low_points, repairs and repeatability. Only their ratios count, and one that is not there weighs nothing. It may have a name, and sigma_pt_um: a number, or "class". For example {"schema": "leastcut/rubric/1", "pass_mark_pct": 70, "weights": {"accuracy": 3, "coverage": 1, "low_points": 2, "repairs": 2, "repeatability": 1}}. Each key may be explained by its name.',
  ),
  word(
    'mark',
    ['pass mark', 'weight', 'reached', 'criterion'],
    'What a survey is worth in per cent: how much of each criterion was reached, by the weights of the rubric.',
  ),
  word(
    'z score',
    ['z', 'z′', "z'", 'z prime', 'off', 'panels off'],
    'How far a panel’s mean is from the reference in units of σ_pt: up to 2 satisfactory, under 3 questionable, from 3 on unsatisfactory, or off. z′ allows besides for what the comparison is uncertain by.',
  ),
  word(
    'σ_pt',
    ['sigma_pt', 'sigma pt'],
    'Standard deviation that a trainee’s mean of a panel is allowed (ISO 13528).',
  ),
  word(
    'zeta score',
    ['ζ', 'zeta'],
    'A difference in units of the standard uncertainties of both sides: how far each is from what it claims.',
  ),
  word(
    'E_n number',
    ['E_n', 'en'],
    'A difference in units of the expanded uncertainties of both sides; within 1 it is satisfactory.',
  ),
  word(
    'bias',
    ['differs'],
    'How much somebody reads more or less than the reference, on one panel or over the whole car.',
  ),
  word(
    'low spot',
    ['low', 'low spots found'],
    'The lowest point of a panel that stands out low or is under the floor.',
  ),
  heading(
    'repairs found',
    ['repairs', 'repaired panel'],
    'Panels that the reference reads as repainted, filled or mixed, and the survey as well.',
  ),
  word(
    'gauge R&R',
    ['r&r', 'reproducibility', 'anova', 'ndc', 'study variation'],
    'How much of what varies is the measuring: repeatability of one hand and reproducibility between hands, by analysis of variance. ndc counts the classes that can be told apart; methods that reckon it differ (the manual’s own example: 4 and 5), and it grows with the parts that were chosen.',
  ),
  word(
    'limits of agreement',
    ['agreement'],
    'Between them lie 95 % of the differences of two ways to measure (Bland and Altman 1986).',
  ),
  word(
    'kappa',
    ['cohen’s kappa', 'cohen kappa'],
    'Agreement on conditions beyond chance: 1 is full, 0 what chance would give. It depends on how common each condition is; where one side calls all panels the same there is none.',
  ),
  heading(
    'conditions',
    ['agreement on conditions', 'conditions of a class'],
    'In a grading: on how many panels the survey’s word for what a panel is (original, refinished …) is that of the reference. Both are held to one baseline, the reference’s.',
  ),
  word(
    'standard uncertainty',
    ['u'],
    'What a figure may be off by, as one standard deviation: all sources together, each by its square (GUM).',
  ),
  word(
    't factor',
    ['student’s t', "student's t"],
    'How many standard uncertainties a 95 % interval reaches to either side where the spread is known from few values: 1.96 from many, 2.78 from five, 4.30 from three.',
  ),
  word(
    'tolerance factor',
    ['factor k'],
    'How many standard deviations under the mean film is credible somewhere on a panel: larger the fewer points were read, for both mean and spread are then known less well.',
  ),
  word(
    'Grubbs’ test',
    ["grubbs' test", 'grubbs'],
    'Whether the point that is farthest from the others stands out by more than chance allows, by the spread of its own panel.',
  ),
  heading(
    'step of the display',
    ['display step'],
    'The smallest difference that a gauge shows, such as 0.1 or 1 µm; a reading is unsure by a part of it.',
  ),
  word(
    'gauge set down again',
    [],
    'How much readings of one point differ where the probe is lifted and set down again: the repeatability.',
  ),
  heading(
    'hard panels',
    ['hard panel'],
    'Panels that fewer of a class read satisfactorily than is usual on the car; where there are none, the one that the class differs most on.',
  ),
  word(
    'interaction',
    [],
    'In gauge R&R: what hands differ by on one part and not on another, beyond what they differ by all over.',
  ),
  word(
    'blunder',
    ['slip in the readings'],
    'Something that went wrong with the readings themselves: another unit, a lost decimal mark, swapped panels, values that nobody read, a copy. A survey with one is questionable at best.',
  ),
  heading(
    'points read',
    [],
    'A criterion of the mark: the share of the reference’s points that the survey read.',
  ),
  heading(
    'panels near the reference',
    [],
    'A criterion of the mark: a panel counts whole where it is satisfactory, half where it is questionable.',
  ),
  heading(
    'repeats close together',
    [],
    'A criterion of the mark: how near readings of one point are to each other, against what is usual of the gauge. It takes points that were read twice or more.',
  ),
  heading(
    'copied',
    [],
    'Surveys that have more values in common with each other, or with the reference, than chance allows, or lie nearer to each other than the class does.',
  ),
  heading(
    'found',
    [],
    'How many low spots and repaired panels of the reference were found, with the 95 % interval of that share.',
  ),
  word(
    'keying slip',
    ['keyed wrongly'],
    'A value that looks ten times too large or too small, by a slip of the key or of the decimal mark.',
  ),
  heading(
    'what is left is unsure by',
    ['doubt'],
    'The parts of the doubt about the clear that is left: how the total is shared between layers, the removal, the spread, the points, the gauge.',
  ),
  heading(
    'a further aim costs less',
    [],
    'Jobs of a batch of which a stronger aim comes to less than the one that was asked for; why, and what film it takes, stands in the record of each.',
  ),
  heading(
    'perhaps twice',
    [],
    'Jobs of one vehicle, or of the same readings: each is done, and one of them may be a job named twice.',
  ),
  heading(
    'not begun',
    [],
    'Jobs of a batch that --fail-fast stopped before their turn; --resume goes on with them.',
  ),
  heading(
    'remarks',
    [],
    'Of a batch: how many warnings each job has (n_warnings). They stand in its record, and are told where it is run alone.',
  ),
  heading(
    'spread over the panel',
    [],
    'How much film varies from point to point over one panel, as a standard deviation.',
  ),
  heading(
    'step by step',
    ['chain of figures'],
    'The estimate of the clear, each figure following from the one before.',
  ),
  heading(
    'why these points',
    ['follow-up sheet'],
    'What a survey asks to be read next: further points, unread panels, the edge of a repair.',
  ),
];
