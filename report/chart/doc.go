package chart
