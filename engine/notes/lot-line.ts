// This file is about advice on the lot line and the people on the other side of it. It never says where the line is or who owns what.
import type { Note } from './note.ts'

export const lotLine: readonly Note[] = [
  {
    name: 'joining-another-fence',
    title: 'Joining a neighbour’s fence',
    text: 'Leave theirs alone until it is agreed in writing: screws in their post are screws in their property, and their post may not bear yours. Stand a post of your own close to it, on your side of the line, and end your fence there. A finger’s width between the two lets both be painted and one be replaced.',
    called: [
      'attach|join|connect|tie|fix neighbor|neighbour|their|existing|next fence|post',
      'fence neighbor|neighbour attach|joining|connect|against|meet',
    ],
    asks: ['can I attach my fence to the neighbours', 'How do I join my fence to the neighbour’s post?'],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'when-to-call-a-surveyor',
    title: 'When to call a surveyor',
    text: 'Call a surveyor, licensed where your country licenses them, when you cannot find the pins, when pins and papers disagree, when a neighbour doubts the line, or when the fence goes on it or close to it. Only a surveyor can say where it is; the lawn edge, the old fence and a map on the phone cannot. Ask for the corners, and for stakes along the line where you cannot see from pin to pin. Have it done before you buy wood.',
    called: [
      'surveyor when|need|call|hire|should|get|worth',
      'survey need|necessary|worth|should|get before|fence|build|building|really',
      'line|boundary|lot know|tell|find property|lot|exactly|where sure|surely|exactly|lawn|grass|map',
    ],
    asks: [
      'When should I call a surveyor?',
      'do i really need a survey before i build?',
      'how do I know exactly where the lot line is?',
    ],
    from: 'http://www.surveylaw.net/lot-surveys.html; the rest common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'finding-the-pins',
    title: 'Finding the corner pins',
    text: 'Pins are often a hand deep in the soil, near where the plat puts them; a metal detector finds the iron ones. Uncover them by hand and drive a stake beside each, not over it. Never move or pull one: a pin that has been moved tells nobody anything. If one is missing, or they do not fit the papers, stop and call a surveyor.',
    called: [
      'find|locate lot|property|boundary line|corner|pin how|where|myself',
      'pin|marker|monument|peg find|missing|lost|buried|where|look corner|property|lot|survey|boundary',
      'pin|monument|marker move|pull|moved survey|property|corner|boundary|lot',
    ],
    asks: ['How do I find my property pins?', 'one survey pin is missing, where do i look?'],
    from: 'http://www.surveylaw.net/lot-surveys.html; the rest common practice, no source',
    cautions: ['lot-line', 'utilities'],
  },
  {
    name: 'old-fence-and-the-line',
    title: 'The old fence and the lot line',
    text: 'An old fence shows where somebody once put a fence, and nothing more. It may stand off the line either way, and using its holes again repeats the mistake. Have the line found first, then decide. What years of standing there may have changed is a question for a lawyer, not for a tape.',
    called: [
      'old|existing|previous fence line|boundary property|lot|on|where|follow',
      'new fence|one where|same old|existing|previous stood|was|place|spot|line',
    ],
    asks: ['Can I put the new fence where the old one was?', 'is the old fence on the property line?'],
    from: 'http://www.surveylaw.net/lot-surveys.html; the rest common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'on-the-line-or-inside',
    title: 'On the line or inside it',
    text: 'Inside is safer: posts, footings, caps and the swing of the gate then all stay on your side, and you can reach the far face to paint it. The strip outside still has to be mown, and in some places land left out for years can be lost: ask a lawyer. For a fence on the line itself, have the neighbour’s agreement in writing first. Ask your building office for the setback, and a surveyor for the line.',
    called: [
      'far|close|near property|lot|boundary line fence|post|build|put',
      'on|right line|boundary inside better|or|should',
      'leave|give|lose|losing strip|land inside|outside line|boundary|setback',
    ],
    asks: [
      'Is it better to build right on the line or a bit inside?',
      'do i lose land if i leave a strip outside the fence along the boundary?',
    ],
    from: 'http://www.surveylaw.net/lot-surveys.html; the rest common practice, no source',
    cautions: ['lot-line', 'local-code'],
  },
  {
    name: 'neighbour-over-the-line',
    title: 'When a neighbour is over the line',
    text: 'Leave it standing. Do not argue from the grass, the old fence or a telephone: have a surveyor mark the line, show the neighbour the stakes, and talk before anybody builds or cuts. Where you still disagree, it is a matter for a lawyer. Moving or cutting what stands there yourself makes it worse.',
    called: [
      "neighbor|neighbour|neighbor's|neighbour's fence my|mine land|side|property|yard|ground take|pull|tear|remove|cut|down|move|knock",
      "neighbor|neighbour|neighbor's|neighbour's fence take|pull|tear|remove|knock|cut down|out|off",
      "neighbor|neighbour|neighbor's|neighbour's|he|they took|taken|built|over|steal|stole|encroach|encroaching line|strip|yard|land|mine|side",
      'neighbor|neighbour wrong|over|inside side|line|boundary|land fence',
    ],
    asks: [
      "the neighbour's fence is on my land, can I take it down",
      'The neighbor built his fence over my line, what can I do?',
      'my neighbour took a strip of my land, now what?',
    ],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'whose-fence',
    title: 'Whose fence it is',
    text: 'A look cannot tell: not the side the posts are on, and not who mended it last. The deed, the plat, a written agreement or the building office may say, and a surveyor can say on which side of the line it stands. Until that is known, leave it as it is and talk to the neighbour.',
    called: [
      'whose fence|boundary|post',
      'own|owner|mine|responsible|belong fence neighbor|neighbour|mine|who|ours|boundary',
    ],
    asks: [
      'How do I know whose fence it is?',
      'who is responsible for the boundary fence?',
      'we share the fence, who fixes it?',
    ],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'which-side-faces-out',
    title: 'Which side of the fence faces out',
    text: 'By habit the finished face looks out and the rails look in, towards whoever builds; some places ask for it. It proves nothing about who owns the fence or where the line is: that is for the deed and a surveyor. Rails are a ladder for whoever stands on their side, which matters with dogs and children. Ask your building office, and tell the neighbour which face is coming.',
    called: [
      'good|nice|finished|pretty side|face out|outward|outside|neighbor|neighbour|street|face|in',
      'side fence face|facing|out|outward|outside which|neighbor|neighbour|street|good|nice',
      'rail inside|outside go|face|facing|be or|which|side',
    ],
    asks: [
      'Which side of the fence faces the neighbour?',
      'does the good side have to face out?',
      'should the rails go on the inside or the outside?',
    ],
    from: 'https://orangebeachal.gov/FAQ.aspx?QID=101, as an example: places differ; the rest common practice, no source',
    cautions: ['local-code', 'lot-line'],
  },
  {
    name: 'talking-to-neighbours',
    title: 'Telling the neighbours',
    text: 'Tell them before the first stake: what, where, how high, when, and which face they will see. Show them the surveyor’s stakes, and ask about their sprinklers, dogs and trees. Ask leave to stand on their side while you work. Put on paper what you agree, with both names under it.',
    called: [
      'tell|talk|speak|inform|notify|telling|talking neighbor|neighbour|door',
      'neighbor|neighbour ask|permission|leave|agree|agreement before|start|build|work|side|writing',
    ],
    asks: ['How do I tell my neighbor about the new fence?', 'should i talk to the neighbours before i start?'],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
  {
    name: 'sharing-the-cost',
    title: 'Sharing the cost with a neighbour',
    text: 'Nothing here can say who pays: places differ, and some have a law on shared fences that your building office or a lawyer knows. Ask before you build, with a drawing and a price in hand, and write down the share and who will look after it. Without an agreement, build on your own side and count on paying for all of it.',
    called: [
      'neighbor|neighbour pay|share|split|chip|contribute fence|cost|half|price|should|have',
      'who pay fence|boundary|shared',
    ],
    asks: ['Does my neighbor have to pay for the fence too?', 'can i ask the neighbour to share the cost?'],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
]
