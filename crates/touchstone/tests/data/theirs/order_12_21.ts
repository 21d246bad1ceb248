[Version] 2.0
# MHz S RI R 50
[Number of Ports] 2
[Two-Port Data Order] 12_21
[Number of Frequencies] 2
[Network Data]
100 .1 .01 .9 .02 .2 .03 .3 .04
200 .11 .01 .8 .02 .21 .03 .31 .04
[End]
