// English texts of the command that works out the best possible build.

export const bestCommand = {
  'help.best': `cairnmark best [FILE...] [--challenge ID] [--as table|json] [--lang en|es]

Works out the best build that the pieces of each challenge allow, by what its places go by, and by its
rules: how high, on how small a base, how many points, how steep a tilt. It says whether any build could
have more, or only which towers were looked at. FILE is as for score. Without a file it is about the demo
class. This is for the teacher: it gives the tower away.

  --challenge ID   only this challenge, by its name or id
  --as json        all that was worked out, as data: mm, mm², the tangent of a tilt
`,
} as const;
