/**
 * Words of an export that are written with letters beyond ASCII: heads of columns, panels, sides.
 *
 * They serve one purpose: a byte that is one letter in one code page and another in the next is
 * settled where one of the two makes a word of the trade and the other makes none.
 */
import { once } from '../../base/kept.ts';

const signs = `µ µm μm nº`;
const western = `säule für größe gerät prüfer stärke lackstärke schichtstärke messgerät tür türe türen
  kotflügel seitentür kofferraumtür vordertür hintertür hecktür fahrertür beifahrertür
  stoßstange stoßfänger außen rücken rückwand schräg überrollbügel säule dachsäule rückseite
  datenträger wagenhöhe geräte gelöscht ungültig épaisseur mesuré mesurée mesurées pièce
  élément éléments unité unités véhicule côté arrière portière portières numéro opérateur
  contrôleur relevé répétition supprimé écart déviation métal modèle série número posición
  medición vehículo matrícula capó año sección operación observación carrocería pequeño técnico
  desviación estándar máximo mínimo unità velocità qualità medição posição veículo peça seção
  capô não repetição observação direção média mätning mätvärde värde mätpunkt dörr tröskel
  stötfångare förare vänster höger främre användare anmärkning avläsning måling målepunkt
  måleværdi værdi dør skærm køretøj højre tærskel aflæsning bemærkning hætte førerdør måler
  støtfanger høyre måledato etupää lämpötila`;
const central = `grubość powłoki część błotnik próg tył przód środek wartość urządzenie użytkownik usunięty
  usunięte skreślony powtórzenie średnia liczność podłoże tloušťka měření měřeno přední zadní
  dveře střecha blatník nárazník díl přístroj poznámka průměr levý pravý levé pravé hrúbka
  kapotáž predné zadné vastagság mérés ajtó tető motorháztető sárvédő lökhárító mértékegység
  érték megjegyzés első hátsó rendszám jármű măsurare ușă uşă portieră acoperiș stânga față
  faţă aripă capotă`;
const turkish = `kalınlık ölçüm kapı çamurluk ön sağ eşik araç parça değer bölge açıklama`;
const baltic = `durelės vertė priekinės galinės kairė dešinė mērījums spārns vērtība mērvienība mõõtmine
  väärtus ühik`;
const cyrillic = `панель панели деталь элемент часть точка точки место толщина покрытия лкп показание
  показания измерение измерения значение мкм единица единицы изм ед капот крыша дверь крыло
  бампер багажник крышка порог передняя задняя передний задний левая правая левый правый
  левое правое переднее заднее лев прав пер зад автомобиль машина дата время номер
  примечание комментарий среднее оператор прибор лонжерон стойка повтор заводской модель
  стекло двери дверца`;
const greek = `πάχος σημείο μέτρηση καπό πόρτα οροφή φτερό μονάδα μονάδες όχημα ημερομηνία τιμή εμπρός
  πίσω αριστερά δεξιά πορτ μπαγκάζ πάνελ σχόλια ώρα εξάρτημα`;
const eastAsian = `パネル パネル名 部位 部位名 部品 測定 測定点 測定値 測定者 測定日時 膜厚 膜厚値 塗膜 塗膜厚 塗装厚 厚さ 単位 日時 時刻 日付 時間 車両 車両番号 備考
  ボンネット ルーフ ドア トランク フェンダー バンパー 右前ドア 左前ドア 右 左 前 後 平均 点番号 位置 番号 読み値 ミル 面板 板件 部件 測點 测点 测量点 测量值
  測量 测量 读数 讀數 厚度 漆膜 漆膜厚度 漆面厚度 涂层厚度 微米 单位 單位 时间 日期 备注 車輛 车辆 车牌 引擎盖 发动机盖 车顶 车门 左前门 右前门 左后门
  右后门 左前车门 右前车门 后备箱 行李箱盖 翼子板 左前翼子板 右前翼子板 保险杠 前保险杠 后保险杠 平均值 操作员 编号 序号
  引擎蓋 車頂 車門 葉子板 後車廂 保險桿 漆膜厚度 測量點 測量值 編號 單位 備註
  패널 부위 부품 판넬 측정점 측정값 측정치 측정 위치 두께 도막두께 도막 단위 번호 비고 날짜 시간 차량 작업자
  보닛 본네트 루프 지붕 트렁크 도어 펜더 휀더 범퍼 앞문 뒷문 운전석 조수석 좌측 우측 왼쪽 오른쪽 평균`;

/** The letters a word needs, by the page they stand on. */
export type Alphabet =
  | 'any'
  | 'western'
  | 'central'
  | 'turkish'
  | 'baltic'
  | 'cyrillic'
  | 'greek'
  | 'east-asian';

const lists: readonly (readonly [Alphabet, string])[] = [
  ['any', signs],
  ['western', western],
  ['central', central],
  ['turkish', turkish],
  ['baltic', baltic],
  ['cyrillic', cyrillic],
  ['greek', greek],
  ['east-asian', eastAsian],
];

const spelledWords = once(
  (): ReadonlyMap<string, Alphabet> =>
    new Map(
      lists.flatMap(([alphabet, words]) =>
        words.split(/\s+/u).map((word) => [word, alphabet] as const),
      ),
    ),
);

/** Whose word it is, in lower case; undefined for one of none of the lists. */
export const alphabetOfWord = (word: string): Alphabet | undefined => spelledWords().get(word);
