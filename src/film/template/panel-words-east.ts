/**
 * The words for body panels in Greek, Russian, Chinese, Japanese and Korean. The last three write words without a gap;
 * a label is taken apart into those of these lists (`panel-label.ts`).
 */
import type { WordRow } from './panel-word-rows.ts';

const russian: readonly WordRow[] = [
  ['bonnet', 'капот'],
  ['roof', 'крыша'],
  ['wing', 'крыло'],
  ['door', 'дверь'],
  ['boot', 'багажник, крышка багажника'],
  ['tailgate', 'дверь багажника'],
  ['bumper', 'бампер'],
  ['sill', 'порог'],
  ['mirror', 'зеркало'],
  ['front', 'передний, передняя, переднее, перед, пер'],
  ['rear', 'задний, задняя, заднее, зад, задн'],
  ['left', 'левый, левая, левое, лев'],
  ['right', 'правый, правая, правое, прав'],
  ['front left', 'пл, лп'],
  ['front right', 'пп'],
  ['rear left', 'зл, лз'],
  ['rear right', 'зп, пз'],
  ['driver', 'водителя, водительская'],
  ['passenger', 'пассажира, пассажирская'],
];

const chinese: readonly WordRow[] = [
  ['bonnet', '引擎盖, 引擎蓋, 机盖, 機蓋, 发动机盖, 發動機蓋, 发动机罩'],
  ['roof', '车顶, 車頂, 天窗顶'],
  ['wing', '翼子板, 叶子板, 葉子板'],
  ['quarter', '后翼子板, 後翼子板, 后叶子板, 後葉子板'],
  ['door', '门, 門, 车门, 車門'],
  ['boot', '后备箱, 后备箱盖, 行李箱, 行李箱盖, 行李箱蓋, 後車廂蓋, 后盖'],
  ['tailgate', '尾门, 尾門'],
  ['bumper', '保险杠, 保險桿, 保险杆'],
  ['sill', '门槛, 門檻, 裙边, 侧裙'],
  ['mirror', '后视镜, 後視鏡, 倒车镜'],
  ['front', '前, 前面'],
  ['rear', '后, 後, 后面'],
  ['left', '左, 左侧, 左側, 左边'],
  ['right', '右, 右侧, 右側, 右边'],
  ['driver', '主驾, 驾驶'],
  ['passenger', '副驾'],
];

const japanese: readonly WordRow[] = [
  ['bonnet', 'ボンネット, フード'],
  ['roof', 'ルーフ, 屋根'],
  ['wing', 'フェンダー'],
  ['quarter', 'リアフェンダー, リヤフェンダー, クォーターパネル, クオーターパネル, クォーター'],
  ['door', 'ドア'],
  ['boot', 'トランク, トランクリッド'],
  ['tailgate', 'バックドア, テールゲート, リアゲート, リヤゲート'],
  ['bumper', 'バンパー'],
  ['sill', 'サイドシル, ロッカーパネル'],
  ['mirror', 'ミラー, ドアミラー'],
  ['front', 'フロント'],
  ['rear', 'リア, リヤ'],
  ['driver', '運転席'],
  ['passenger', '助手席'],
  ['filler', '側'],
];

const korean: readonly WordRow[] = [
  ['bonnet', '보닛, 본넷, 본네트, 후드'],
  ['roof', '루프, 지붕'],
  ['wing', '펜더, 휀더, 휀다'],
  ['quarter', '쿼터, 쿼터패널, 리어펜더, 뒤펜더, 뒤휀다'],
  ['door', '도어, 문, 문짝'],
  ['boot', '트렁크'],
  ['tailgate', '테일게이트'],
  ['bumper', '범퍼'],
  ['mirror', '미러, 사이드미러'],
  ['front', '앞, 프론트'],
  ['rear', '뒤, 리어'],
  ['left', '좌, 좌측, 왼쪽'],
  ['right', '우, 우측, 오른쪽'],
  ['driver', '운전석'],
  ['passenger', '조수석'],
];

const greek: readonly WordRow[] = [
  ['bonnet', 'καπό'],
  ['roof', 'οροφή, ουρανός'],
  ['wing', 'φτερό'],
  ['door', 'πόρτα'],
  ['boot', 'πορτμπαγκάζ, πορτ μπαγκάζ'],
  ['bumper', 'προφυλακτήρας'],
  ['sill', 'μαρσπιέ'],
  ['mirror', 'καθρέφτης'],
  ['front', 'μπροστά, μπροστινή, μπροστινό, μπροστινός, εμπρός, εμπρόσθια'],
  ['rear', 'πίσω, οπίσθια'],
  ['left', 'αριστερά, αριστερή, αριστερό, αριστερός'],
  ['right', 'δεξιά, δεξί, δεξιό, δεξιός'],
];

export const wordsEast = { russian, chinese, japanese, korean, greek };
