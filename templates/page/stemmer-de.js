/*! @orama/stemmers 3.1.18, the German one, unchanged below this note: https://www.npmjs.com/package/@orama/stemmers

Copyright 2023 OramaSearch Inc.

Licensed under the Apache License, Version 2.0 (the "License");
you may not use this file except in compliance with the License.
You may obtain a copy of the License at

    http://www.apache.org/licenses/LICENSE-2.0

Unless required by applicable law or agreed to in writing, software
distributed under the License is distributed on an "AS IS" BASIS,
WITHOUT WARRANTIES OR CONDITIONS OF ANY KIND, either express or implied.
See the License for the specific language governing permissions and
limitations under the License.

It is made of Snowball, https://snowballstem.org:

Copyright (c) 2001, Dr Martin Porter
Copyright (c) 2004,2005, Richard Boulton
Copyright (c) 2013, Yoshiki Shibukawa
Copyright (c) 2006,2007,2009,2010,2011,2014-2019, Olly Betts
All rights reserved.

Redistribution and use in source and binary forms, with or without
modification, are permitted provided that the following conditions
are met:

  1. Redistributions of source code must retain the above copyright notice,
     this list of conditions and the following disclaimer.
  2. Redistributions in binary form must reproduce the above copyright notice,
     this list of conditions and the following disclaimer in the documentation
     and/or other materials provided with the distribution.
  3. Neither the name of the Snowball project nor the names of its contributors
     may be used to endorse or promote products derived from this software
     without specific prior written permission.

THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS" AND
ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE IMPLIED
WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE FOR
ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES
(INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES;
LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON
ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT
(INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS
SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.
*/
function r(){this.p=function(r){this.j=r,this.cursor=0,this.a=this.j.length,this.f=0,this.c=this.cursor,this.d=this.a},this.z=function(){return this.j},this.w=function(r){this.j=r.j,this.cursor=r.cursor,this.a=r.a,this.f=r.f,this.c=r.c,this.d=r.d},this.i=function(r,s,t){if(this.cursor>=this.a)return!1;var i=this.j.charCodeAt(this.cursor);return!(i>t)&&!(i<s)&&0!=(r[(i-=s)>>>3]&1<<(7&i))&&(this.cursor++,!0)},this.n=function(r,s,t){if(this.cursor<=this.f)return!1;var i=this.j.charCodeAt(this.cursor-1);return!(i>t)&&!(i<s)&&0!=(r[(i-=s)>>>3]&1<<(7&i))&&(this.cursor--,!0)},this.k=function(r,s,t){if(this.cursor>=this.a)return!1;var i=this.j.charCodeAt(this.cursor);return i>t||i<s?(this.cursor++,!0):0==(r[(i-=s)>>>3]&1<<(7&i))&&(this.cursor++,!0)},this.q=function(r,s,t){if(this.cursor<=this.f)return!1;var i=this.j.charCodeAt(this.cursor-1);return i>t||i<s?(this.cursor--,!0):0==(r[(i-=s)>>>3]&1<<(7&i))&&(this.cursor--,!0)},this.m=function(r){return!(this.a-this.cursor<r.length)&&this.j.slice(this.cursor,this.cursor+r.length)==r&&(this.cursor+=r.length,!0)},this.g=function(r){return!(this.cursor-this.f<r.length)&&this.j.slice(this.cursor-r.length,this.cursor)==r&&(this.cursor-=r.length,!0)},this.o=function(r){for(var s=0,t=r.length,i=this.cursor,c=this.a,u=0,o=0,e=!1;;){var h,n=s+(t-s>>>1),a=0,f=u<o?u:o,b=r[n];for(h=f;h<b[0].length;h++){if(i+f==c){a=-1;break}if(0!=(a=this.j.charCodeAt(i+f)-b[0].charCodeAt(h)))break;f++}if(0>a?(t=n,o=f):(s=n,u=f),1>=t-s){if(0<s||t==s||e)break;e=!0}}for(;;){if(u>=(b=r[s])[0].length&&(this.cursor=i+b[0].length,4>b.length||(s=b[3](this),this.cursor=i+b[0].length,s)))return b[2];if(0>(s=b[1]))return 0}},this.h=function(r){for(var s=0,t=r.length,i=this.cursor,c=this.f,u=0,o=0,e=!1;;){var h,n=s+(t-s>>1),a=0,f=u<o?u:o,b=r[n];for(h=b[0].length-1-f;0<=h;h--){if(i-f==c){a=-1;break}if(0!=(a=this.j.charCodeAt(i-1-f)-b[0].charCodeAt(h)))break;f++}if(0>a?(t=n,o=f):(s=n,u=f),1>=t-s){if(0<s||t==s||e)break;e=!0}}for(;;){if(u>=(b=r[s])[0].length&&(this.cursor=i-b[0].length,4>b.length||(s=b[3](this),this.cursor=i-b[0].length,s)))return b[2];if(0>(s=b[1]))return 0}},this.s=function(r,s,t){var i=t.length-(s-r);return this.j=this.j.slice(0,r)+t+this.j.slice(s),this.a+=i,this.cursor>=s?this.cursor+=i:this.cursor>r&&(this.cursor=r),i},this.t=function(){return!(0>this.c)&&!(this.c>this.d)&&!(this.d>this.a)&&!(this.a>this.j.length)},this.b=function(r){var s=!1;return this.t()&&(this.s(this.c,this.d,r),s=!0),s},this.e=function(){return this.b("")},this.r=function(r,s,t){s=this.s(r,s,t),r<=this.c&&(this.c+=s),r<=this.d&&(this.d+=s)},this.u=function(){var r="";return this.t()&&(r=this.j.slice(this.c,this.d)),r},this.v=function(){return this.j.slice(0,this.a)}}let s=new function(){var s=new r,t=[["",-1,5],["U",0,2],["Y",0,1],["\xe4",0,3],["\xf6",0,4],["\xfc",0,2]],i=[["e",-1,2],["em",-1,1],["en",-1,2],["ern",-1,1],["er",-1,1],["s",-1,3],["es",5,2]],c=[["en",-1,1],["er",-1,1],["st",-1,2],["est",2,1]],u=[["ig",-1,1],["lich",-1,1]],o=[["end",-1,1],["ig",-1,2],["ung",-1,1],["lich",-1,3],["isch",-1,2],["ik",-1,2],["heit",-1,3],["keit",-1,4]],e=[17,65,16,1,0,0,0,0,0,0,0,0,0,0,0,0,8,0,32,8],h=[117,30,5],n=[117,30,4],a=0,f=0,b=0;this.l=function(){var r=s.cursor;return!function(){for(var r=s.cursor;;){var t=s.cursor;r:{s:{var i=s.cursor;if(s.c=s.cursor,s.m("\xdf")){if(s.d=s.cursor,!s.b("ss"))return;break s}if(s.cursor=i,s.cursor>=s.a)break r;s.cursor++}continue}s.cursor=t;break}for(s.cursor=r;;){r=s.cursor;r:{for(;;){t=s.cursor;t:if(s.i(e,97,252)){s.c=s.cursor;i:{if(i=s.cursor,s.m("u")&&(s.d=s.cursor,s.i(e,97,252))){if(!s.b("U"))return;break i}if(s.cursor=i,!s.m("y")||(s.d=s.cursor,!s.i(e,97,252)))break t;if(!s.b("Y"))return}s.cursor=t;break}if(s.cursor=t,s.cursor>=s.a)break r;s.cursor++}continue}s.cursor=r;break}}(),s.cursor=r,r=s.cursor,!function(){f=b=s.a;var r=s.cursor,t=s.cursor+3;if(!(t>s.a)){for(s.cursor=t,a=s.cursor,s.cursor=r;!s.i(e,97,252);){if(s.cursor>=s.a)return;s.cursor++}for(;!s.k(e,97,252);){if(s.cursor>=s.a)return;s.cursor++}for((b=s.cursor)<a&&(b=a);!s.i(e,97,252);){if(s.cursor>=s.a)return;s.cursor++}for(;!s.k(e,97,252);){if(s.cursor>=s.a)return;s.cursor++}f=s.cursor}}(),s.cursor=r,s.f=s.cursor,s.cursor=s.a,!function(){var r,t=s.a-s.cursor;r:if(s.d=s.cursor,0!=(r=s.h(i))&&(s.c=s.cursor,b<=s.cursor))switch(r){case 1:if(!s.e())return;break;case 2:if(!s.e())return;if(r=s.a-s.cursor,s.d=s.cursor,s.g("s"))if(s.c=s.cursor,s.g("nis")){if(!s.e())return}else s.cursor=s.a-r;else s.cursor=s.a-r;break;case 3:if(!s.n(h,98,116))break r;if(!s.e())return}s.cursor=s.a-t,t=s.a-s.cursor;r:if(s.d=s.cursor,0!=(r=s.h(c))&&(s.c=s.cursor,b<=s.cursor))switch(r){case 1:if(!s.e())return;break;case 2:if(!s.n(n,98,116)||(r=s.cursor-3)<s.f)break r;if(s.cursor=r,!s.e())return}s.cursor=s.a-t,t=s.a-s.cursor;r:if(s.d=s.cursor,0!=(r=s.h(o))&&(s.c=s.cursor,f<=s.cursor))switch(r){case 1:if(!s.e())return;r=s.a-s.cursor;s:if(s.d=s.cursor,s.g("ig")){s.c=s.cursor;var e=s.a-s.cursor;if(s.g("e")){s.cursor=s.a-r;break s}if(s.cursor=s.a-e,f<=s.cursor){if(!s.e())return}else s.cursor=s.a-r}else s.cursor=s.a-r;break;case 2:if(r=s.a-s.cursor,s.g("e"))break r;if(s.cursor=s.a-r,!s.e())return;break;case 3:if(!s.e())return;r=s.a-s.cursor;s:{if((s.d=s.cursor,e=s.a-s.cursor,!s.g("er"))&&(s.cursor=s.a-e,!s.g("en"))){s.cursor=s.a-r;break s}if(s.c=s.cursor,b<=s.cursor){if(!s.e())return}else s.cursor=s.a-r}break;case 4:if(!s.e())return;if(r=s.a-s.cursor,s.d=s.cursor,0==s.h(u))s.cursor=s.a-r;else if(s.c=s.cursor,f<=s.cursor){if(!s.e())return}else s.cursor=s.a-r}s.cursor=s.a-t}(),s.cursor=s.f,r=s.cursor,!function(){for(var r;;){var i=s.cursor;r:if(s.c=s.cursor,0!=(r=s.o(t))){switch(s.d=s.cursor,r){case 1:if(!s.b("y"))return;break;case 2:if(!s.b("u"))return;break;case 3:if(!s.b("a"))return;break;case 4:if(!s.b("o"))return;break;case 5:if(s.cursor>=s.a)break r;s.cursor++}continue}s.cursor=i;break}}(),s.cursor=r,!0},this.stemWord=function(r){return s.p(r),this.l(),s.j}};export function stemmer(r){return s.stemWord(r)}export const language="german";
