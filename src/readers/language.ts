// This file is about noticing that somebody writes another language than English. Numbers, units and cautions are done with care in English only,
// so it is said, and little is taken. It would rather miss a line than take a hurried English one for something else.

/** Small words of other languages that are no English words. In a line or two they are what there is to go by. */
const elsewhere = new Set(
  `
  que cuántos cuantos cuántas cuantas cuánto cuanto cuánta para los las una unos unas con del por cómo está están necesito quiero tengo cada más pero hoyos pulgadas cerca cercas postes hormigón bolsas puedo debo hasta donde muy
  quantos quantas preciso tenho quero não são uma com também buracos sacos cimento você meu minha qual quais fazer
  combien dois avec sont une les est je mes mon sur chaque faut quelle quel quelles besoin dans trous poteaux béton clôture clôtures où très puis-je mettre votre notre pouces
  wie viele viel ich für mit ein eine einen einem der den dem brauche habe sind ist nicht kein keine wieviel mein meine meinen löcher pfosten zaun säcke jeweils tief breit kann muss auf zwischen wird werden welche welcher soll zoll
  quanti quante quanto servono sono della delle degli gli nel mio buche pali cemento sacchi staccionata posso devo ogni perché
  hoeveel heb ik nodig voor een het zijn mijn niet gaten palen zakken diep breed welke moet elke schutting
  ile jest są jak potrzebuję mam dla każdy moje dołów słupków worków betonu głębokości czy nie się płot
  hur många behöver jag och är till med inte hål stolpar säckar djupa breda ska varje staket
  hvor mange trenger jeg og med ikke mine hull stolper sekker dype brede skal hver gjerde behøver
  kuinka monta tarvitsen paljonko säkkiä reikää syvä
  kaç için bir çit çukur derin lazım gerekiyor kadar torba
  berapa untuk saya yang dengan pagar lubang semen butuh perlu
  ilan kailangan mga para bakod semento
  bao nhiêu tôi và hàng rào xi măng cần
  kolik potřebuju potřebuji mám jsou pytlů sloupků
  hány nekem és egy zsák lyuk kerítés
  câte câți nevoie pentru și gropi saci gard
  `
    .trim()
    .split(/\s+/),
)

const english = new Set(
  `the a an and or of to in on for with at by is are was be been it its this that these those there i my me we our us you your he they how many much what
  which when where why do does did can could should would will need want have has had got get from than then so if but not no yes each every between
  about around same too also just only more less`
    .trim()
    .split(/\s+/),
)

/** Whether most of what tells a language speaks of another than English. */
export function isForeign(said: string): boolean {
  const words = said.toLowerCase().match(/[\p{L}\p{M}'’-]+/gu) ?? []
  const letters = words.join('').match(/\p{L}/gu) ?? []
  const others = letters.filter((it) => !/\p{Script=Latin}/u.test(it))
  // A μ or a π is no Greek.
  if (others.length > 3 && others.length * 2 > letters.length) return true
  const foreign = words.filter((it) => elsewhere.has(it)).length + (/[¿¡]/.test(said) ? 2 : 0)
  return foreign >= 2 && foreign > words.filter((it) => english.has(it)).length
}

/** Whether a quantity of such a message is safe to take: a plain number with a sign for its unit, the same everywhere. “1.500” is not, and “4 in” may be no inches. */
export const isPlainEverywhere = (quantity: string): boolean =>
  /^\d+(?:[.,]\d{1,2})?\s*(?:mm|cm|m|kg|l|ft|lbs?|m[²2]|m[³3]|°\s?[CF]|%|["″'′])$/i.test(quantity.trim())
