/** Violin II of the demo piece, in the notation of `notation.ts`. */
export const VIOLIN_TWO = `
0  rq
1  {p} D4w
2  D4h( E4h)
3  F#4h( D4h)
4  D4h( B3h)
5  G4h( E4h)
6  D4h( B3h)
7  {>} C4q( E4q F#4h)
8  {!} D4w
9  {mp} D5h( B4h)
10 G4h( D4h)
11 {<} E4h( A4h)
12 {!} F#4w
13 G4w
14 {>} G4w~
15 {p} G4w
16 D4h( C4h)
17 {mp} B4h( G4h)
18 G4w
19 {<} A4w
20 {mf} F#4h( D#4h)
21 E4h( G4h)
22 {<} E4h( C4h)
23 A4e' A4e' A4e' A4e' C5e' C5e' C5e' C5e'
24 {f} C5h( {>} C4h)
25 {p} {pizz.} rq B4q rq G4q
26 rq A4q rq F#4q
27 rq G4q rq E4q
28 rq F#4q rq D4q
29 rq G4q rq E4q
30 rq G4q rq D4q
31 rq C5q rq A4q
32 rq F#4q rq {f} {arco} D4ev( F#4e)
33 G4hn( E4q C4q)
34 D4q.( C4e B3h)
35 C4q.( D4e E4q F#4q)
36 F#4h( D#4h)
37 B4h( G4h)
38 G4h( F#4h)
39 {>} A4w
40 {!} F#4w
41 {p} D4h( G4q F#4q)
42 G4h( E4h)
43 {<} F#4h( G4q A4q)
44 B4h( C5q A4q)
45 {mf} D5h( D5q B4q)
46 {>} A4h( D5h)
47 {pp} B4w~
48 B4w
49 {<} G4w~
50 {>} G4w~
51 G4w
52 {ppp} F#4w
53 {mf} {leggiero} re B4e' B4e' re B4e' B4e'
54 re A4e' A4e' re A4e' A4e'
55 re G4e' G4e' re A4e' A4e'
56 re G4e' G4e' re B4e' B4e'
57 re B4e' B4e' re B4e' B4e'
58 re C5e' C5e' re C5e' C5e'
59 {<} re C5e' C5e' re A4e' A4e'
60 {!} B4q. rq.
61 {f} B4e> B4s D#5s E5e D#5e> D#5s E5s F#5e
62 E5e> E5s( F#5s) G5e G5q.>
63 E5e> G5s F#5s E5e E5e> E5s D5s C5e
64 A4q.> A4q.>
65 {<} B4e> B4s D#5s E5e E5e> E5s G5s A5e
66 {ff} G4q.( A4q.)
67 A4q.( F#4q.)
68 {>} F#4q. {!} rq.
69 {p} B3e( D4e B3e) B3e( D4e B3e)
70 D4e( G4e D4e) E4e( G4e E4e)
71 {<} F#4e( A4e F#4e) F#4e( A4e F#4e)
72 D4e( G4e D4e) B3e( D4e B3e)
73 {f} B4e( D5e B4e) A4e( D5e A4e)
74 G4e( D5e G4e) A4e( E5e A4e)
75 A4e( C5e A4e) A4e( C5e A4e)
76 B4h.
77 {ff} D5e' G5e' B5e' B5q.>
78 E5e' C5e' A4e' A4q.>
79 C5q. C5q.>
80 [D4 B4]q.>n rq.
81 {p} B4h.(
82 {>} A4h.
83 {pp} G4h.)
84 D5h.^
`;
