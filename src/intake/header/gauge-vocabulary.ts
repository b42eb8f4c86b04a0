/**
 * What the columns of a gauge export are called, by role: English first, then German, French,
 * Spanish, Italian, Dutch, Portuguese, Polish, Swedish and Danish, and the plain words in other languages of Europe and in
 * Chinese, Japanese and Korean. Written without regard to case, accents and the marks between words.
 */
import type { Vocabulary } from './header.ts';

/** The English names of the columns that files mostly have: what a name in no language may be a slip of. */
export const english = {
  panel: `panel name|panel|part|body part|area|location|body panel|component|element|zone|
  section`,
  point: `points|point|pt|pts|pkt|spot|position|point no|point number|measuring point|measurement point|
  pos`,
  reading: `reading|readings|thickness|film thickness|paint thickness|coating thickness|
  dry film thickness|layer thickness|value|dft|film|measurement|measured value|measured|result`,
  repeat: `repeat|no|nr|number|reading no|reading number|repeat no|measurement no`,
  vehicle: `vehicle|car|vin|reg|registration|vehicle id|car id|registration no|reg no|
  licence plate|license plate|number plate|plate`,
  operator: `operator|user|inspector|trainee|student|measured by|technician`,
  time: `time|date|date time|datetime|timestamp|measured at|measured on`,
  unit: `unit|units|uom|unit of measure|unit of measurement|measurement unit|measuring unit`,
  note: `note|notes|comment|comments|remark|remarks`,
} as const;

const panel = `${english.panel}|bauteil|karosserieteil|teil|blech|blechteil|bereich|
  panneau|piece|element de carrosserie|partie|emplacement|panel de carroceria|pieza|parte|
  elemento|zona|area de medicion|pannello|pezzo|parte carrozzeria|paneel|onderdeel|deel|plaatdeel|
  painel|peca|panel nadwozia|element nadwozia|czesc|miejsce|panel namn|del|karossdel|karosseridel|
  панель|деталь|элемент|часть|面板|部位|板件|部件|鈑金|パネル|部位名|部品|
  パネル名|dil|dil karoserie|panel karoserie|plech|parca|panel adi|kaporta|kaporta parcasi|osa|korinosa|pelti|paneeli|elem|karosszeriaelem|alkatresz|τμημα|εξαρτημα|πανελ|패널|도어/패널|부위|부품|판넬|
  diel|cast|dio|detale|detalė|dala|detaļa|детайл|част|елемент|кузовна деталь|deo|karosijos dalis|virsbuves dala|kereosa|kere osa|detail|piesa|del karoserije|
  detalj|panou|panou caroserie|element caroserie|element karoserie|karosseri del|karosserielement|platdel|plat|korin osa|karosszeria elem|kaporta panel|τμημα αμαξωματος|لوحة|اللوحة|لوح|اللوح|الجزء|جزء|القطعة|قطعة|جزء الهيكل|اسم اللوحة|פאנל|לוח|חלק|חלק מרכב|שם החלק|חלק פח`;
const point = `${english.point}|messpunkt|punkt|messstelle|stelle|messlage|lage|messort|messposition|mess pos|measuring position|measurement position|measuring spot|test point|pt no|spot no|point id|place|position nr|punkt nr|point de mesure|endroit|point n|
  punto|punto de medicion|posicion|punto di misura|posizione|punto n|meetpunt|punt|
  positie|ponto|ponto de medicao|posicao|punkt pomiarowy|punkt pomiaru|pozycja|matpunkt|
  malepunkt|точка|точка измерения|место|点|测点|测量点|點|測點|ポイント|測定点|点番号|位置|bod|merici bod|nokta|olcum noktasi|piste|mittauspiste|pont|meresi pont|σημειο|σημειο μετρησης|測定番号|測定点番号|測定位置番号|测量编号|测点编号|测点号|点号|포인트|측정점|측정 위치|지점|번호|tocka|točka|punct|punct de masurare|taskas|taškas|punkts|mootepunkt|mõõtepunkt|merne mesto|merno mesto|mjerna tocka|merilna tocka|mjesto|місце|точка вимірювання|място|bod merania|miesto|
  no точки|номер точки|точка no|cislo bodu|bod c|numer punktu|nr punktu|pkt pomiarowy|pontszam|meropont|mittauspisteen nro|malepunkt nr|maalepunkt|matpunkt nr|ponto no|ponto n|olcum noktasi no|nokta no|punct nr|nr punct|αριθμος σημειου|نقطة|النقطة|نقطة القياس|موضع|الموضع|رقم النقطة|נקודה|נקודת מדידה|מיקום|מס נקודה|מספר נקודה`;
const reading = `${english.reading}|messwert|messwerte|wert|starke|staerke|schichtstarke|schichtstaerke|lackstarke|lackstaerke|schichtdicke|lackdicke|lackschichtdicke|dicke|messung|lackschicht|
  mesure|mesures|valeur|epaisseur|epaisseur du film|epaisseur de peinture|epaisseur peinture|
  epaisseur mesuree|releve|medicion|medida|medidas|lectura|lecturas|valor|espesor|espesor de pintura|
  espesor de pelicula|misura|misure|misurazione|lettura|valore|spessore|spessore vernice|
  spessore della vernice|meting|metingen|meetwaarde|waarde|laagdikte|lakdikte|dikte|medicao|leitura|
  leituras|espessura|espessura da pintura|espessura de tinta|pomiar|pomiary|odczyt|wartosc|grubosc|
  grubosc lakieru|grubość lakieru|grubosc powloki|matning|matvarde|varde|avlasning|tjocklek|
  lacktjocklek|skikttjocklek|maling|malevaerdi|målevaerdi|maleværdi|vaerdi|værdi|tykkelse|
  laktykkelse|lagtykkelse|aflaesning|aflæsning|толщина|толщина покрытия|толщина лкп|показание|
  показания|измерение|значение|厚度|膜厚|漆膜厚度|漆面厚度|读数|測值|测量值|涂层厚度|
  塗膜厚|測定値|塗装厚|厚さ|膜厚値|thk|thick|tloustka|tloustka laku|tloustka vrstvy|mereni|namerena hodnota|
  hodnota|kalinlik|boya kalinligi|paksuus|kalvonpaksuus|maalinpaksuus|mittaustulos|lukema|vastagsag|retegvastagsag|festekvastagsag|
  mert ertek|παχος|παχος βαφης|μετρηση|τιμη|olcum|olcum degeri|deger|도막두께|도막 두께|두께|측정값|측정치|값|hrubka|hrubka laku|namerana hodnota|nameraná hodnota|hodnota merania|meranie|grosime|grosimea|grosimea vopselei|grosime vopsea|valoare|masurare|masuratoare|
  товщина|товщина лфп|товщина покриття|значення|вимірювання|показник|дебелина|дебелина на боята|стойност|измерване|debljina|debljina laka|debljina boje|vrijednost|vrednost|mjerenje|merenje|
  debelina|debelina laka|meritev|izmerjena vrednost|paksus|varvi paksus|värvi paksus|mootmine|mõõtmine|vaartus|väärtus|storis|dazu storis|dažų storis|verte|vertė|matavimas|biezums|krasas biezums|krāsas biezums|vertiba|vērtība|merijums|mērījums|дебелина на покритието|
  odecet|zmerena hodnota|wynik|wynik pomiaru|wartosc pomiaru|grubosc warstwy|leolvasas|meres|meresi eredmeny|ertek|citire|valoare masurata|grosime strat|lakktykkelse|belegningstykkelse|maleverdi|verdi|avlesning|mattvarde|fargtjocklek|arvo|mittaus|mittausarvo|kerrospaksuus|kerroksen paksuus|okuma|olculen deger|ενδειξη|μετρηση παχους|τιμη μετρησης|valor medido|espessura medida|espessura do revestimento|سماكة|السماكة|سمك|السمك|سمك الطلاء|سماكة الطلاء|سماكه|قراءة|القراءة|قياس|القياس|قيمة|القيمة|القيمة المقاسة|עובי|עובי צבע|עובי הצבע|עובי שכבה|קריאה|מדידה|ערך|ערך נמדד`;
const repeat = `${english.repeat}|wiederholung|wdh|lfd nr|messung nr|repetition|repeticion|ripetizione|herhaling|repeticao|
  powtorzenie|upprepning|gentagelse|repetition n|n lecture|повтор|重复|重複|繰り返し`;
const vehicle = `${english.vehicle}|job|job no|job number|work order|auftrag|auftragsnr|auftrag nr|auftragsnummer|fahrzeug|fahrzeugnr|fahrzeug id|kennzeichen|fin|
  fahrgestellnummer|wagen|auto|vehicule|voiture|immatriculation|chassis|vehiculo|coche|matricula|
  bastidor|veicolo|vettura|targa|telaio|voertuig|kenteken|veiculo|carro|viatura|placa|pojazd|
  samochod|nr rejestracyjny|fordon|bil|registreringsnummer|koretoj|køretøj|nummerplade|
  автомобиль|машина|авто|госномер|车辆|车|车牌|車輛|車|車両|車両番号|ナンバー`;
const operator = `${english.operator}|prufer|bediener|
  benutzer|operateur|utilisateur|controleur|operador|usuario|operatore|utente|uzytkownik|
  gebruiker|bediende|utilizador|operator pomiaru|anvandare|bruger|оператор|操作员|操作員|
  測定者|作業者`;
const time = `${english.time}|datum|zeit|uhrzeit|
  zeitstempel|datum zeit|datum uhrzeit|heure|horodatage|date heure|date et heure|fecha|hora|
  fecha hora|fecha y hora|data|ora|data ora|data e ora|tijd|tijdstip|datum tijd|data hora|
  data e hora|godzina|czas|data godzina|tid|tidpunkt|dato|tidspunkt|klokkeslaet|дата|время|
  дата время|时间|日期|時間|日時|時刻|測定日時|日付|
  cas|cas mereni|data pomiaru|czas pomiaru|datum cas|ido|idopont|datum ido|meres ideje|ora masurarii|data si ora|timp|aika|paivamaara|pvm|kellonaika|mittausaika|klokkeslett|malt|tarih|saat|zaman|tarih saat|ωρα|ημερομηνια|ημερομηνια ωρα|χρονος|data da medicao|hora da medicao|الوقت|وقت|التاريخ|تاريخ|التاريخ والوقت|زمن|שעה|תאריך|זמן|תאריך ושעה`;
const substrate = `substrate|material|metal|base material|untergrund|grundwerkstoff|substrat|
  support|sustrato|substrato|supporto|ondergrond|podloze|podłoże|underlag|подложка|основа|底材|
  基材|素地`;
const layer = `layer|coat|schicht|couche|capa|strato|laag|camada|warstwa|skikt|lag|слой|层|層`;
const unit = `${english.unit}|masseinheit|unite de mesure|unidad de medida|meeteenheid|reading unit|einheit|messeinheit|unite|unites|unidad|unidades|unita|
  unita di misura|eenheid|unidade|jednostka|enhet|enhed|единица|единицы|ед изм|единица измерения|
  单位|單位|単位|단위|jednotka|jedinica|enota|uhik|ühik|vienetas|merviniba|mervieniba|mērvienība|одиниця|одиниці|мерна единица|yksikko|yksikkö|mertekegyseg|μονάδα|birim|unitate|unitate de masura|
  egyseg|olcu birimi|jednostka miary|maleenhet|maleenhed|mittayksikko|yksikot|μοναδα μετρησης|μοναδες|um unidade|unidade de medida|وحدة|الوحدة|وحدة القياس|الوحدات|יחידה|יחידות|יחידת מידה`;
const note = `${english.note}|bemerkung|bemerkungen|kommentar|notiz|
  anmerkung|remarque|commentaire|observacion|observaciones|nota|comentario|commento|osservazioni|
  opmerking|opmerkingen|comentario obs|observacao|observacoes|obs|uwaga|uwagi|komentarz|anmarkning|
  bemaerkning|bemærkning|примечание|комментарий|备注|備註|備考|メモ|コメント|비고|메모|poznamka|poznamky|poznámka|napomena|opomba|markus|märkus|pastaba|piezime|piezīme|примітка|коментар|забележка|huomautus|huomio|megjegyzes|not|notlar|aciklama|σχόλια|παρατηρησεις|observatii|nota bene|
  ملاحظة|ملاحظات|הערה|הערות`;
const deleted = `deleted|delete|excluded|exclude|rejected|removed|discarded|ignored|invalid|
  struck out|cancelled|canceled|void|voided|omitted|annullato|annullata|annulé|annulée|anulado|anulada|storniert|
  gestrichen|geloscht|geloescht|ausgeschlossen|ungultig|ungueltig|verworfen|supprime|exclu|eliminado|borrado|excluido|
  eliminato|cancellato|escluso|verwijderd|uitgesloten|apagado|removido|usuniety|usuniete|skreslony|
  wykluczony|borttagen|raderad|slettet|fjernet|usunieto|wykreslony|odrzucony|smazano|smazany|vyrazeno|vymazane|torolve|törölve|silindi|poistettu|hylatty|hylätty|obrisano|izbrisano|sters|видалено|изтрито|удалено|удалён|удален|исключено|已删除|删除|
  eliminada|eliminados|eliminadas|borrada|borrados|borradas|excluida|excluidos|excluidas|suprimido|suprimida|
  descartado|descartada|tachado|tachada|rechazado|rechazada|anulados|anuladas|apagada|apagados|removida|
  rejeitado|rejeitada|riscado|riscada|eliminata|eliminati|eliminate|cancellata|cancellati|esclusa|esclusi|
  escluse|scartato|scartata|scartati|scartate|supprimee|supprimes|supprimees|exclue|exclus|exclues|efface|
  effacee|ecarte|ecartee|rejete|rejetee|raye|rayee|geschrapt|gewist|doorgehaald|afgekeurd|vervallen|entfernt|
  gelöschte|aussortiert|durchgestrichen|usunieta|skreslona|skreslone|wykluczona|wykluczone|odrzucona|odrzucone|
  wykreslona|struken|strukna|utesluten|uteslutna|kasserad|kasserade|borttagna|raderade|slettede|udeladt|
  udelukket|kasseret|utelatt|forkastet|vylouceno|vyskrtnuto|smazana|удалена|исключен|исключена|
  отброшено|排除|已刪除|刪除|削除|除外|無効`;
const valid = `valid|accepted|counted|included|gultig|gueltig|valide|valido|valida|geldig|wazny|giltig|
  gyldig|有效|有効|ważny|platne|platny|platny|platný|platné|ervenyes|érvényes|gecerli|geçerli|kelvollinen|voimassa|valjano|veljavno|vazeci|važeći|действительно|действителен|годен|валидно|дійсний|유효|έγκυρο|valabil|kehtiv`;
/** Columns that may tell of a reading that it does not count, among other things. */
const status = `status|state|flag|zustand|statut|etat|estado|stato|stan|статус|状态|狀態|状態`;
/** Whole words for a point that tape marks; `Marke` and `Marque` are a make of cars as well, `Repère` any point. */
const marked = `mark|markiert|angezeichnet|markierter punkt|marquee|point marque|marcado|marcada|punto marcado|segnato|segnata|
  marcato|contrassegnato|punto segnato|gemarkeerd|gemerkt|assinalado|oznaczony|zaznaczony|markerad|markerat|markeret|afmaerket|
  markert|avmerket|oznaceno|oznaceny|merkitty|отмечено|отмечен|помечено|已标记|已標記|マーク済み`;

export const gaugeVocabulary = {
  panel,
  point,
  reading,
  repeat,
  vehicle,
  operator,
  time,
  substrate,
  layer,
  unit,
  u: '',
  v: '',
  note,
  place: '',
  marked,
  curved: 'curve',
  deleted,
  valid,
  status,
} as const satisfies Vocabulary<string>;
export type GaugeRole = keyof typeof gaugeVocabulary;
