# Comment s’écrivent les nombres, les mesures et les dates.
number-decimal-mark = ,
number-group-mark =  

figure-at-least = au moins { $figure }
figure-at-most = au plus { $figure }
not-known = inconnu

date-long = { $day ->
        [1] 1er
       *[other] { $day }
    } { $month } { $year }
date-short = { $weekday } { $day } { $month }
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre
month-short-1 = janv.
month-short-2 = févr.
month-short-3 = mars
month-short-4 = avr.
month-short-5 = mai
month-short-6 = juin
month-short-7 = juil.
month-short-8 = août
month-short-9 = sept.
month-short-10 = oct.
month-short-11 = nov.
month-short-12 = déc.
weekday-1 = lundi
weekday-2 = mardi
weekday-3 = mercredi
weekday-4 = jeudi
weekday-5 = vendredi
weekday-6 = samedi
weekday-7 = dimanche
weekday-short-1 = lun.
weekday-short-2 = mar.
weekday-short-3 = mer.
weekday-short-4 = jeu.
weekday-short-5 = ven.
weekday-short-6 = sam.
weekday-short-7 = dim.

unit-minutes = minutes
unit-minute = minute
unit-hours = heures
unit-hour = heure
unit-days = jours
unit-day = jour
unit-weeks = semaines
unit-week = semaine
unit-months = mois
unit-month = mois
unit-years = ans
unit-year = an
unit-litres = litres
unit-litre = litre
unit-per = par
unit-each = pièce
unit-to = à
unit-times = fois
unit-or = ou
