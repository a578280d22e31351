// This file is about advice before anything is bought: what the fence is for, how high, how open, and who builds it.
import type { Note } from './note.ts'

export const idea: readonly Note[] = [
  {
    name: 'where-to-start',
    title: 'Where to start',
    text: 'Settle four things before you buy: what the fence must do, where the lot line and the buried lines are, what your building office wants, and which hinges and latch the gates will have. Then draw the run with the gates on it, and only then count posts and boards. Build one short run first: it teaches you the rest.',
    called: [
      'where start|begin fence|building|project|job',
      'how start|begin build|building|project',
      'never|beginner|novice|newbie fence|built|build start|first|advice|tip',
    ],
    asks: [
      'Where do I start with building a picket fence?',
      'never built a fence before, what do i need to know first?',
      'I have never done this before, where do I begin?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities', 'lot-line', 'local-code'],
  },
  {
    name: 'keeping-a-dog-in',
    title: 'Keeping a dog in',
    text: 'A dog goes through the gaps, under the bottom or over the top. For the gaps, measure the width of its head between two boards: where the head goes, the rest follows, and a puppy is measured as it is today. Keep the bottom close to the ground, and put the rails on the outside, where they make no ladder.',
    called: [
      'dog|puppy|pup|terrier keep|hold|contain in|inside|yard fence|picket|gap',
      'dog|puppy|pup|terrier squeeze|squeezing|through|slip|escape|escaping picket|gap|board|fence stop|keep|how|will',
    ],
    asks: [
      'Will a picket fence keep my puppy in?',
      'how do i stop the dog squeezing through the pickets?',
      'what is a good gap to keep a small dog in?',
      'how wide can the gaps be with a puppy?',
      'what spacing stops a terrier getting through?',
      'biggest gap so the dog cannot get his head through?',
      'my dog is a whippet, will she get through?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'children-and-climbing',
    title: 'Small children and climbing',
    text: 'A picket fence slows a small child and does not stop one. Keep the gaps too narrow for a head, the rails on the far side where feet find no hold, and boxes, logs and toys away from it. Set the latch where a small hand cannot reach. Round water ask your building office first: other rules may hold.',
    called: [
      'child|children|kid|toddler climb|climbing|climbed over|fence|rail|stop',
      'child|children|kid|toddler keep|hold|safe in|inside|yard fence|picket',
    ],
    asks: ['How do I stop the kids climbing over the fence?', 'will a picket fence keep my toddler in the yard?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'wind-and-solid-fences',
    title: 'Wind on solid fences',
    text: 'Wind pushes on wood and goes through gaps: a solid fence takes far more of it than pickets of the same height, and a taller one pulls harder on its posts. A solid fence wants closer and stouter posts, deeper holes, and firm ground round them. In an open place, on a hill or by water, have the posts checked.',
    called: [
      'solid|closed|privacy wind|windy|gust more|worse|catch|problem|affect|harder',
      'wind|windy picket|gap|open solid|better|worse|closed',
    ],
    asks: ['Is a solid fence worse in the wind than pickets?', 'does a privacy fence catch more wind?'],
    onward: [
      {
        after: [
          'wind-from-pressure',
          'wind-solid-fence',
          'wind-open-fence',
          'post-strength',
          'rail-strength',
          'embedment-check',
        ],
        asks: [
          'is that a lot?',
          'what do i do about that?',
          'how do i make it stronger?',
          'what can i change?',
          'any way around it?',
        ],
      },
    ],
    from: 'That only the solid area of an open fence is counted: ASCE 7-16, table 29.4-2, https://lfportal.everettwa.gov/WebLink/0/doc/1852116/Page79.aspx; the rest common practice, no source',
    cautions: ['structure', 'local-code'],
  },
  {
    name: 'try-it-first',
    title: 'Trying the look before you build',
    text: 'Drive two stakes, stretch a string at the height you have in mind, and lean a few boards against it with the gap you have in mind. Look from the street, from the kitchen window and sitting down. Try a wider and a narrower gap beside it, and take a photograph of each. An hour spent so is cheaper than a fence you do not like.',
    called: [
      'try|mock|test|picture|imagine|preview look|gap|height|fence before build|building|buy|buying',
      'see|know look like before build|building|buy',
    ],
    asks: [
      'Can I try out the gap and height before I build?',
      'how do i know what it will look like before building it?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'front-fence-height',
    title: 'A fence in front of the house',
    text: 'Ask your building office first: many places want a fence in front of the house lower than one at the side or the back, and some want it half open. Within that, a low fence is friendlier, takes less wind and costs less. Stand at the line with a board and look before you choose.',
    called: [
      'high|tall|height front fence|yard|garden can|may|allowed|be|limit|how',
      'front height|tall|high fence|yard|garden best|good|should|right|too',
      'front lower|higher|taller fence|yard back|side|why',
    ],
    asks: [
      'What is a good height for a front yard fence?',
      'why does the front fence have to be lower than the back one?',
    ],
    from: 'https://www.augustaga.gov/189/Fence-Corner-Lot-Requirements and https://centennialco.gov/Online-Services/Apply-for-a-Fence-Permit, as examples: places differ; the rest common practice, no source',
    cautions: ['local-code'],
  },
  {
    name: 'hire-or-do-it',
    title: 'What to hire out',
    text: 'Hire a surveyor for the line, and someone with a machine where there is rock, a steep bank or more holes than your back will take. Setting posts, hanging pickets and finishing are slow but not hard, and you can stop at any point. Gates are the fussiest part: if you hire a carpenter for one thing, let it be those.',
    called: [
      'hire|contractor|pro|professional myself|diy|yourself|or|part fence|build|it',
      'do|build myself|diy|yourself hire|contractor|pro|professional|worth',
    ],
    asks: ['Should I hire a contractor or build the fence myself?', 'which parts of the fence should i hire out?'],
    from: 'common practice, no source',
    cautions: ['lot-line'],
  },
]
