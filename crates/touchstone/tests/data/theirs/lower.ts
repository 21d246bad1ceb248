[Version] 2.0
# GHz S MA R 50
[Number of Ports] 4
[Number of Frequencies] 2
[Reference] 50 75
 10 100
[Matrix Format] Lower
[Network Data]
1 .5 10
.1 -20 .4 30
.2 -40 .15 50 .3 -60
.12 7 .13 8 .14 9 .35 -10 ! four
2 .51 10
.11 -20 .41 30
.21 -40 .16 50 .31 -60
.121 7 .131 8 .141 9 .351 -10
[End]
